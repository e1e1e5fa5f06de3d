// SPDX-License-Identifier: MIT
#include <QFile>
#include <QTest>

#include "sync/segment_forger.h"

using namespace duskrow::test;

namespace {

const Scene scene;
const Forger forger{scene};

// Most memory this process ever held, in KiB; 0 where the system does not tell.
long mostResident()
{
    QFile status(QStringLiteral("/proc/self/status"));
    if (!status.open(QIODevice::ReadOnly)) return 0;
    for (const QByteArray& line : status.readAll().split('\n'))
        if (line.startsWith("VmHWM:")) return line.mid(6).trimmed().split(' ').front().toLong();
    return 0;
}

} // namespace

// Alone in its process: the most memory ever held cannot be taken back.
class SegmentBombTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void bombsCostNoMemory()
    {
#if defined(DUSKROW_SANITIZE)
        QSKIP("a sanitizer's own memory hides ours");
#endif
        if (mostResident() == 0) QSKIP("the system does not tell");
        // 1 GiB of zeros in some 32 KiB, made piece by piece so that making it costs nothing here.
        std::string bomb(std::size_t{1} << 20, '\0');
        ZSTD_CCtx* context = ZSTD_createCCtx();
        ZSTD_CCtx_setPledgedSrcSize(context, std::uint64_t{1} << 30);
        const std::string piece(std::size_t{1} << 20, '\0');
        ZSTD_outBuffer out{bomb.data(), bomb.size(), 0};
        for (int i = 0; i < 1024; ++i) {
            ZSTD_inBuffer in{piece.data(), piece.size(), 0};
            ZSTD_compressStream2(context, &out, &in, i == 1023 ? ZSTD_e_end : ZSTD_e_continue);
        }
        ZSTD_freeCCtx(context);
        bomb.resize(out.pos);
        // The same with a content size that promises 8 MiB: bytes 6 to 9 of the frame's header.
        std::string modest = bomb;
        QCOMPARE(static_cast<std::uint8_t>(bomb[4]) >> 6, 2);
        const std::size_t size = (static_cast<std::uint8_t>(bomb[4]) & 0x20) != 0 ? 5 : 6;
        modest.replace(size, 4, littleEndian(8 << 20, 4));
        const std::string honest = forger.withPayload(bomb, 8 << 20);
        const std::string lie = forger.withPayload(modest, 8 << 20);
        const long before = mostResident();
        for (int i = 0; i < 20; ++i) {
            QCOMPARE(fate(honest), "too large payload");
            QCOMPARE(fate(lie), "malformed payload");
        }
        const long grown = mostResident() - before;
        qInfo("grew by %ld KiB", grown);
        QVERIFY2(grown < (8 + 10) * 1024, QByteArray::number(qlonglong{grown}).constData());
    }
};

QTEST_APPLESS_MAIN(SegmentBombTest)
#include "segment_bomb_test.moc"
