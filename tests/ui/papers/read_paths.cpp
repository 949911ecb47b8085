// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/papers/read_paths.h"

#include <gtest/gtest.h>

#include <QXmlStreamReader>

#include "tests/ui/papers/read_paper.h"

namespace kerfwall {
namespace {

constexpr double kMmPerPoint = 25.4 / 72;

class PathReader {
  public:
    explicit PathReader(const QByteArray& trace) : m_xml(trace) {}

    std::vector<PagePaths> all() {
        while (!m_xml.atEnd()) {
            m_xml.readNext();
            const QString name = m_xml.name().toString();
            if (m_xml.isStartElement()) {
                start(name);
            } else if (m_xml.isEndElement() && name == QLatin1String("stroke_path")) {
                m_strokes = false;
            }
        }
        EXPECT_FALSE(m_xml.hasError()) << m_xml.errorString().toStdString();
        return m_pages;
    }

  private:
    double number(const char* name) const { return m_xml.attributes().value(QLatin1String(name)).toDouble(); }

    Point placed(const char* x, const char* y) const {
        const double px = number(x);
        const double py = number(y);
        return {(m_matrix[0] * px + m_matrix[2] * py + m_matrix[4]) * kMmPerPoint,
                (m_matrix[1] * px + m_matrix[3] * py + m_matrix[5]) * kMmPerPoint};
    }

    void line(Point to) {
        m_pages.back().lines.push_back({m_at, to, m_width, m_dashed});
        m_at = to;
    }

    void start(const QString& name) {
        if (name == QLatin1String("page")) m_pages.emplace_back();
        if (name == QLatin1String("stroke_path")) {
            m_strokes = true;
            const QStringList matrix = m_xml.attributes().value(QLatin1String("transform")).toString().split(QLatin1Char(' '));
            for (int i = 0; i < 6; ++i) m_matrix[static_cast<std::size_t>(i)] = matrix.at(i).toDouble();
            m_width = number("linewidth") * m_matrix[0] * kMmPerPoint;
            m_dashed = m_xml.attributes().hasAttribute(QLatin1String("dash"));
        }
        if (!m_strokes) return;
        if (name == QLatin1String("moveto")) m_first = m_at = placed("x", "y");
        if (name == QLatin1String("lineto")) line(placed("x", "y"));
        if (name == QLatin1String("closepath") && distance(m_at, m_first) > 1e-6) line(m_first);
        if (name == QLatin1String("curveto")) {
            const PageCurve curve{{m_at, placed("x1", "y1"), placed("x2", "y2"), placed("x3", "y3")}};
            m_pages.back().curves.push_back(curve);
            m_at = curve.handles[3];
        }
    }

    QXmlStreamReader m_xml;
    std::vector<PagePaths> m_pages;
    std::array<double, 6> m_matrix{};
    Point m_first;
    Point m_at;
    double m_width = 0;
    bool m_strokes = false;
    bool m_dashed = false;
};

}  // namespace

std::vector<PagePaths> pathsOf(const QString& pdf) {
    return PathReader(outputOf(QStringLiteral("mutool"), {QStringLiteral("draw"), QStringLiteral("-F"), QStringLiteral("trace"), pdf})).all();
}

}  // namespace kerfwall
