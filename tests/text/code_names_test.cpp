// SPDX-License-Identifier: MIT
#include <QSet>
#include <QTest>

#include "text/code_names.h"

using namespace duskrow::domain;
using duskrow::text::name;

namespace {

template <typename E, std::size_t N>
void checkNames(const std::array<std::string_view, N>& codes)
{
    QSet<QString> seen;
    for (std::size_t i = 0; i < N; ++i) {
        const QString words = name(static_cast<E>(i));
        QVERIFY2(!words.isEmpty(), codes[i].data());
        QVERIFY2(!words.contains(u'_'), qPrintable(words));
        QVERIFY2(!seen.contains(words), qPrintable(words));
        seen.insert(words);
    }
    QCOMPARE(seen.size(), qsizetype(N));
}

} // namespace

class CodeNamesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyChoiceHasWordsOfItsOwn()
    {
        checkNames<Role>(roleNames);
        checkNames<Says>(saysNames);
        checkNames<FixMethod>(fixMethodNames);
        checkNames<HeightRule>(heightRuleNames);
        checkNames<EndReason>(endReasonNames);
        checkNames<ServiceWhat>(serviceWhatNames);
        checkNames<Outcome>(outcomeNames);
        checkNames<NoCountReason>(noCountReasonNames);
        checkNames<TrapState>(trapStateNames);
        checkNames<CountMethod>(countMethodNames);
        checkNames<SampleState>(sampleStateNames);
        checkNames<Decided>(decidedNames);
    }

    void noCountIsNeverCalledZero()
    {
        QCOMPARE(name(Outcome::CouldNotCount), QStringLiteral("could not count"));
        QCOMPARE(name(NoCountReason::Fallen), QStringLiteral("trap had fallen"));
    }
};

QTEST_GUILESS_MAIN(CodeNamesTest)
#include "code_names_test.moc"
