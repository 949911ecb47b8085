// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_svg.h"

#include <QXmlStreamWriter>
#include <array>
#include <charconv>
#include <map>
#include <set>
#include <utility>

#include "ui/lettering.h"
#include "ui/surface.h"

namespace kerfwall {
namespace {

constexpr std::array kGroups{"kerfs", "work", "template", "lines", "marks"};  // in painting order

/// The shortest text that reads back as the same number, whatever the locale.
QString numberText(double value) {
    std::array<char, 64> text{};
    if (value == 0) value = 0;  // no "-0"
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
    return QString::fromLatin1(text.data(), end - text.data());
}

const char* groupOf(Ink ink) {
    switch (ink) {
        case Ink::LayoutLine:
        case Ink::FootLine:
        case Ink::BackLine:
            return "lines";
        case Ink::KerfBand:
        case Ink::RunOut:
            return "kerfs";
        case Ink::Template:
        case Ink::DrawnCutout:
        case Ink::Waste:
        case Ink::ReliefHole:
            return "template";
        case Ink::Work:
        case Ink::Workpiece:
            return "work";
        default:
            return "marks";
    }
}

struct Element {
    QString name;
    std::vector<std::pair<QString, QString>> attributes;
    QString text;
};

class SvgSurface : public Surface {
  public:
    explicit SvgSurface(double height) : m_height(height) {}

    void begin(Ink ink, const std::string& id) override {
        m_ink = ink;
        m_id = id;
    }

    void line(Point from, Point to, const LineType& type) override {
        Element element{QStringLiteral("line"), {}, {}};
        if (m_ink == Ink::LayoutLine || m_ink == Ink::FootLine || m_ink == Ink::BackLine) add(element, "id", lineName());
        add(element, "x1", numberText(from.x));
        add(element, "y1", numberText(m_height - from.y));
        add(element, "x2", numberText(to.x));
        add(element, "y2", numberText(m_height - to.y));
        addStroke(element, &type);
        keep(std::move(element));
    }

    void area(const std::vector<OutlineLoop>& loops, const QColor& fill, const LineType* type) override {
        Element element{QStringLiteral("path"), {}, {}};
        QString path;
        for (const OutlineLoop& loop : loops) path += loopText(loop);
        add(element, "d", path.trimmed());
        add(element, "fill", fill.isValid() ? fill.name() : QStringLiteral("none"));
        add(element, "fill-rule", QStringLiteral("evenodd"));
        addStroke(element, type);
        keep(std::move(element));
    }

    void circle(Point centre, double radius, const QColor& fill, const LineType* type) override {
        Element element{QStringLiteral("circle"), {}, {}};
        add(element, "cx", numberText(centre.x));
        add(element, "cy", numberText(m_height - centre.y));
        add(element, "r", numberText(radius));
        add(element, "fill", fill.isValid() ? fill.name() : QStringLiteral("none"));
        addStroke(element, type);
        keep(std::move(element));
    }

    void text(const Label& label, const QColor& colour, const QColor&) override {
        Element element{QStringLiteral("text"), {}, QString::fromStdString(label.text)};
        const QString x = numberText(label.at.x);
        const QString y = numberText(m_height - label.at.y);
        add(element, "x", x);
        add(element, "y", y);
        add(element, "font-size", numberText(label.height));
        add(element, "fill", colour.name());
        if (label.anchor != Anchor::Left) {
            add(element, "text-anchor",
                label.anchor == Anchor::Middle ? QStringLiteral("middle") : QStringLiteral("end"));
        }
        if (label.turn != 0) {
            add(element, "transform", QStringLiteral("rotate(%1 %2 %3)").arg(numberText(-label.turn), x, y));
        }
        keep(std::move(element));
    }

    [[nodiscard]] double markScale() const override { return 1; }

    void write(QXmlStreamWriter& xml) const {
        for (const char* group : kGroups) {
            xml.writeStartElement(QStringLiteral("g"));
            xml.writeAttribute(QStringLiteral("id"), QString::fromLatin1(group));
            const auto found = m_elements.find(group);
            if (found != m_elements.end()) {
                for (const Element& element : found->second) writeElement(xml, element);
            }
            xml.writeEndElement();
        }
    }

  private:
    static void add(Element& element, const char* name, const QString& value) {
        element.attributes.emplace_back(QString::fromLatin1(name), value);
    }

    static void addStroke(Element& element, const LineType* type) {
        if (!type) return;
        add(element, "stroke", type->colour.name());
        add(element, "stroke-width", numberText(type->wide ? kWideLine : kNarrowLine));
        if (type->dashes.empty()) return;
        QStringList dashes;
        for (const double dash : type->dashes) dashes.append(numberText(dash));
        add(element, "stroke-dasharray", dashes.join(QLatin1Char(' ')));
    }

    static void writeElement(QXmlStreamWriter& xml, const Element& element) {
        xml.writeStartElement(element.name);
        for (const auto& [name, value] : element.attributes) xml.writeAttribute(name, value);
        if (!element.text.isEmpty()) xml.writeCharacters(element.text);
        xml.writeEndElement();
    }

    [[nodiscard]] QString lineName() const {
        const QString id = QString::fromStdString(m_id);
        for (const char* group : kGroups) {
            if (id == QLatin1String(group)) return QStringLiteral("line-") + id;
        }
        return id;
    }

    [[nodiscard]] QString placeText(Point place) const {
        return numberText(place.x) + QLatin1Char(' ') + numberText(m_height - place.y);
    }

    /// Anticlockwise stays anticlockwise on the page: with y down that is SVG's sweep flag 0.
    [[nodiscard]] QString loopText(const OutlineLoop& loop) const {
        if (loop.empty()) return {};
        QString text = QStringLiteral("M ") + placeText(loop.front().from);
        for (const OutlinePiece& piece : loop) {
            if (!piece.isArc) {
                text += QStringLiteral(" L ") + placeText(piece.to);
                continue;
            }
            const bool large = sweepOf(piece) > 3.14159265358979323846;
            text += QStringLiteral(" A %1 %1 0 %2 %3 %4")
                        .arg(numberText(piece.radius), large ? QStringLiteral("1") : QStringLiteral("0"),
                             piece.turn == Turn::Left ? QStringLiteral("0") : QStringLiteral("1"),
                             placeText(piece.to));
        }
        return text + QStringLiteral(" Z ");
    }

    void keep(Element element) { m_elements[groupOf(m_ink)].push_back(std::move(element)); }

    double m_height;
    Ink m_ink = Ink::LayoutLine;
    std::string m_id;
    std::map<std::string, std::vector<Element>> m_elements;
};

}  // namespace

QByteArray svgOf(const Drawing& drawing, double width, double height, const QString& title) {
    SvgSurface surface(height);
    drawMarks(surface, drawing, paletteOf(PaletteKind::Paper));
    QByteArray bytes;
    QXmlStreamWriter xml(&bytes);
    xml.setAutoFormatting(true);
    xml.setAutoFormattingIndent(1);
    xml.writeStartDocument();
    xml.writeStartElement(QStringLiteral("svg"));
    xml.writeDefaultNamespace(QStringLiteral("http://www.w3.org/2000/svg"));
    xml.writeAttribute(QStringLiteral("width"), numberText(width) + QStringLiteral("mm"));
    xml.writeAttribute(QStringLiteral("height"), numberText(height) + QStringLiteral("mm"));
    xml.writeAttribute(QStringLiteral("viewBox"),
                       QStringLiteral("0 0 %1 %2").arg(numberText(width), numberText(height)));
    xml.writeAttribute(QStringLiteral("font-family"), letteringFont().family());
    xml.writeTextElement(QStringLiteral("title"), title);
    surface.write(xml);
    xml.writeEndElement();
    xml.writeEndDocument();
    return bytes;
}

}  // namespace kerfwall
