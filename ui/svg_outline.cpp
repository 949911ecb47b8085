// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/svg_outline.h"

#include <QCoreApplication>
#include <QFile>
#include <QSet>
#include <QXmlStreamReader>
#include <optional>
#include <utility>

#include "core/says/svg_frame.h"
#include "core/says/svg_path.h"
#include "core/says/svg_shapes.h"

namespace kerfwall {
namespace {

constexpr qint64 kLargestFile = 16 * 1024 * 1024;

struct SvgWords {
    Q_DECLARE_TR_FUNCTIONS(SvgWords)
};

using Trouble = std::unexpected<QString>;

std::optional<std::string> attributeOf(const QXmlStreamAttributes& attributes, std::string_view name) {
    const QLatin1String key(name.data(), static_cast<qsizetype>(name.size()));
    if (!attributes.hasAttribute(key)) return std::nullopt;
    return attributes.value(key).toString().toStdString();
}

bool isPassedOver(const QXmlStreamReader& xml) {
    static const QSet<QString> names{QStringLiteral("defs"),   QStringLiteral("clipPath"), QStringLiteral("mask"),    QStringLiteral("symbol"),
                                     QStringLiteral("marker"), QStringLiteral("pattern"),  QStringLiteral("metadata")};
    const QString style = xml.attributes().value(QLatin1String("style")).toString().remove(QLatin1Char(' '));
    return names.contains(xml.name().toString()) || style.contains(QLatin1String("display:none")) ||
           xml.attributes().value(QLatin1String("display")) == QLatin1String("none");
}

class SvgReader {
  public:
    explicit SvgReader(const QByteArray& svg) : m_xml(svg) {}

    std::expected<std::vector<Point>, QString> read() {
        if (!m_xml.readNextStartElement() || m_xml.name() != QLatin1String("svg")) {
            return Trouble(SvgWords::tr("This is no SVG picture; choose a file whose first element is svg."));
        }
        const QXmlStreamAttributes root = m_xml.attributes();
        const auto frame = readSvgFrame(attributeOf(root, "width"), attributeOf(root, "height"), attributeOf(root, "viewBox"));
        if (!frame) return Trouble(onLine(frame.error()));
        m_mmPerUnit = frame->mmPerUnit;
        readChildren(transformHere({}));
        if (m_xml.hasError()) {
            return Trouble(SvgWords::tr("Line %1 of the file: it is no sound XML (%2); save it again from the drawing program.").arg(m_xml.lineNumber()).arg(m_xml.errorString()));
        }
        if (!m_trouble.isEmpty()) return Trouble(m_trouble);
        if (!m_corners) return Trouble(SvgWords::tr("The picture holds no outline; draw one as a closed path."));
        for (Point& corner : *m_corners) corner = inMillimetres(*frame, corner);
        return *m_corners;
    }

  private:
    [[nodiscard]] QString onLine(const std::string& sentence) const {
        return SvgWords::tr("Line %1 of the file: %2").arg(m_xml.lineNumber()).arg(QString::fromStdString(sentence));
    }
    void refuse(const QString& sentence) {
        if (m_trouble.isEmpty()) m_trouble = sentence;
    }

    SvgTransform transformHere(const SvgTransform& outer) {
        const QXmlStreamAttributes attributes = m_xml.attributes();
        const QString style = attributes.value(QLatin1String("style")).toString();
        if (style.contains(QLatin1String("transform"))) refuse(onLine("A transform stands in a style; save the file with plain coordinates."));
        const auto read = readSvgTransform(attributeOf(attributes, "transform").value_or(""));
        if (!read) refuse(onLine(read.error()));
        return combined(outer, read.value_or(SvgTransform{}));
    }

    void readChildren(const SvgTransform& outer) {
        while (m_trouble.isEmpty() && m_xml.readNextStartElement()) readElement(outer);
    }

    void readElement(const SvgTransform& outer) {
        const std::string name = m_xml.name().toString().toStdString();
        if (isPassedOver(m_xml)) return m_xml.skipCurrentElement();
        if (name == "use" || name == "svg") {
            return refuse(onLine("A picture within the picture (\u201c" + name + "\u201d) is not read; save the file with plain paths."));
        }
        if (!isSvgShape(name) && name != "g" && name != "a" && name != "switch") return m_xml.skipCurrentElement();
        if (++m_depth > kDeepest) return refuse(onLine("Its groups are nested too deep; take them apart in the drawing program."));
        const SvgTransform transform = transformHere(outer);
        if (m_trouble.isEmpty() && isSvgShape(name)) readShape(name, transform);
        readChildren(transform);
        --m_depth;
    }

    void readShape(const std::string& name, const SvgTransform& transform) {
        if (m_corners) return refuse(onLine("The picture holds several outlines, and this is the second; keep one of them."));
        const QXmlStreamAttributes attributes = m_xml.attributes();
        const auto data = svgShapeData(name, [&](std::string_view key) { return attributeOf(attributes, key); });
        if (!data) return refuse(onLine(data.error()));
        auto corners = readSvgPath(*data, kSvgTolerance / (m_mmPerUnit * transform.largestScale()));
        if (!corners) return refuse(onLine(corners.error()));
        for (Point& corner : *corners) corner = transform.of(corner);
        m_corners = std::move(*corners);
    }

    static constexpr int kDeepest = 64;
    QXmlStreamReader m_xml;
    double m_mmPerUnit = 1;
    int m_depth = 0;
    std::optional<std::vector<Point>> m_corners;  // user units
    QString m_trouble;
};

}  // namespace

std::expected<std::vector<Point>, QString> readSvgOutline(const QByteArray& svg) { return SvgReader(svg).read(); }

std::expected<std::vector<Point>, QString> openSvgOutline(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return Trouble(SvgWords::tr("It cannot be opened (%1); choose another file.").arg(file.errorString()));
    if (file.size() > kLargestFile) return Trouble(SvgWords::tr("It is larger than 16 MB; save the one outline by itself."));
    return readSvgOutline(file.readAll());
}

}  // namespace kerfwall
