// SPDX-License-Identifier: MIT
#include "app/print/walk_sheet_printer.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QXmlStreamWriter>

#include <array>

#include "app/print/sheet_layout.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr double margin = 36; // points: half an inch, which every printer reaches
constexpr int dotsAnInch = 72 * SheetPen::unitsAPoint;

// QPdfWriter knows a title but no author; readers find both in this packet.
//
// Source  ISO 16684-1 (XMP), Dublin Core title and creator; from memory
QByteArray metadata(const QString& title, const QString& author)
{
    const QString rdf = QStringLiteral("http://www.w3.org/1999/02/22-rdf-syntax-ns#");
    const QString dc = QStringLiteral("http://purl.org/dc/elements/1.1/");
    QByteArray bytes;
    QXmlStreamWriter xml(&bytes);
    xml.writeProcessingInstruction(
        QStringLiteral("xpacket"), QStringLiteral("begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\""));
    xml.writeNamespace(QStringLiteral("adobe:ns:meta/"), QStringLiteral("x"));
    xml.writeStartElement(QStringLiteral("adobe:ns:meta/"), QStringLiteral("xmpmeta"));
    xml.writeNamespace(rdf, QStringLiteral("rdf"));
    xml.writeNamespace(dc, QStringLiteral("dc"));
    xml.writeStartElement(rdf, QStringLiteral("RDF"));
    xml.writeStartElement(rdf, QStringLiteral("Description"));
    xml.writeAttribute(rdf, QStringLiteral("about"), QString());
    xml.writeStartElement(dc, QStringLiteral("title"));
    xml.writeStartElement(rdf, QStringLiteral("Alt"));
    xml.writeStartElement(rdf, QStringLiteral("li"));
    xml.writeAttribute(QStringLiteral("xml:lang"), QStringLiteral("x-default"));
    xml.writeCharacters(title);
    for (int i = 0; i < 3; ++i) xml.writeEndElement();
    if (!author.isEmpty()) {
        xml.writeStartElement(dc, QStringLiteral("creator"));
        xml.writeStartElement(rdf, QStringLiteral("Seq"));
        xml.writeTextElement(rdf, QStringLiteral("li"), author);
        for (int i = 0; i < 2; ++i) xml.writeEndElement();
    }
    for (int i = 0; i < 3; ++i) xml.writeEndElement();
    xml.writeProcessingInstruction(QStringLiteral("xpacket"), QStringLiteral("end=\"w\""));
    return bytes;
}

} // namespace

QPageSize paperOf(const QLocale& locale)
{
    constexpr std::array letter{QLocale::UnitedStates, QLocale::Canada, QLocale::Mexico, QLocale::Philippines,
        QLocale::Chile, QLocale::Colombia, QLocale::Venezuela, QLocale::CostaRica, QLocale::Guatemala};
    for (const QLocale::Territory territory : letter)
        if (locale.territory() == territory) return QPageSize(QPageSize::Letter);
    return QPageSize(QPageSize::A4);
}

PrintedSheet printedSheet(const WalkPaper& paper, const QPageSize& size)
{
    PrintedSheet printed;
    QBuffer buffer(&printed.pdf);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    const QString title = QStringLiteral("%1: %2, %3")
                              .arg(paper.sheet.kind, paper.sheet.title, paper.sheet.facts.front().value);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Duskrow"));
    writer.setDocumentXmpMetadata(metadata(title, paper.who));
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_1_6);
    writer.setResolution(dotsAnInch);
    writer.setPageSize(size);
    writer.setPageMargins(QMarginsF(margin, margin, margin, margin), QPageLayout::Point);
    const QSizeF page = size.size(QPageSize::Point) - QSizeF(2 * margin, 2 * margin);
    const SheetLayout layout(paper, writer, page);
    printed.pages = layout.pages();
    QPainter painter(&writer);
    for (int i = 0; i < printed.pages; ++i) {
        if (i > 0) writer.newPage();
        layout.paint(painter, i);
    }
    painter.end();
    return printed;
}

Result<int> printSheet(const WalkPaper& paper, const QString& path, const QLocale& locale)
{
    const PrintedSheet printed = printedSheet(paper, paperOf(locale));
    QSaveFile file(path);
    const bool isWritten =
        file.open(QIODevice::WriteOnly) && file.write(printed.pdf) == printed.pdf.size() && file.commit();
    if (!isWritten)
        return Error{ErrorCode::FileUnwritable, {path.toStdString()}, file.errorString().toStdString()};
    return printed.pages;
}

} // namespace duskrow::app
