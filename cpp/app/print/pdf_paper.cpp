// SPDX-License-Identifier: MIT
#include "app/print/pdf_paper.h"

#include <QBuffer>
#include <QXmlStreamWriter>

#include <array>

#include "app/print/sheet_pen.h"

namespace duskrow::app {

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

QByteArray writePdf(const QString& title, const QString& author, const QPageSize& size,
    const std::function<void(QPdfWriter& writer, const QSizeF& page)>& draw)
{
    QByteArray pdf;
    QBuffer buffer(&pdf);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Duskrow"));
    writer.setDocumentXmpMetadata(metadata(title, author));
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_1_6);
    writer.setResolution(dotsAnInch);
    writer.setPageSize(size);
    writer.setPageMargins(QMarginsF(margin, margin, margin, margin), QPageLayout::Point);
    draw(writer, size.size(QPageSize::Point) - QSizeF(2 * margin, 2 * margin));
    return pdf;
}

} // namespace duskrow::app
