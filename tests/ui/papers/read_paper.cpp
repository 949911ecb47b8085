// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/papers/read_paper.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QProcess>
#include <QXmlStreamReader>
#include <algorithm>

#include "core/says/project_text.h"

namespace kerfwall {
namespace {

constexpr double kMmPerPoint = 25.4 / 72;

}  // namespace

Project sampleProject(const QString& name) {
    QFile file(QStringLiteral(KERFWALL_SAMPLES "/") + name);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
    return readProject(file.readAll().toStdString()).value();
}

QByteArray outputOf(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(60000)) << program.toStdString();
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput();
}

std::vector<PageStroke> strokesOf(const QString& pdf) {
    std::vector<PageStroke> strokes;
    QXmlStreamReader xml(outputOf(QStringLiteral("mutool"), {QStringLiteral("draw"), QStringLiteral("-F"),
                                                             QStringLiteral("trace"), pdf}));
    int page = 0;
    std::vector<Point> places;
    double scale = 1;
    double width = 0;
    QStringList matrix;
    bool isStroke = false;
    while (!xml.atEnd()) {
        xml.readNext();
        const QString name = xml.name().toString();
        if (xml.isStartElement() && name == QLatin1String("page")) ++page;
        if (xml.isStartElement() && name == QLatin1String("stroke_path")) {
            isStroke = true;
            places.clear();
            matrix = xml.attributes().value(QLatin1String("transform")).toString().split(QLatin1Char(' '));
            scale = matrix[0].toDouble() * kMmPerPoint;
            width = xml.attributes().value(QLatin1String("linewidth")).toDouble() * scale;
        }
        if (xml.isStartElement() && isStroke &&
            (name == QLatin1String("moveto") || name == QLatin1String("lineto"))) {
            const double x = xml.attributes().value(QLatin1String("x")).toDouble();
            const double y = xml.attributes().value(QLatin1String("y")).toDouble();
            places.push_back({x * scale + matrix[4].toDouble() * kMmPerPoint,
                              y * matrix[3].toDouble() * kMmPerPoint + matrix[5].toDouble() * kMmPerPoint});
        }
        if (xml.isEndElement() && name == QLatin1String("stroke_path")) {
            isStroke = false;
            if (places.size() == 2) strokes.push_back({page, places[0], places[1], width});
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return strokes;
}

std::vector<double> sizesOf(const QString& pdf, const QString& words) {
    std::vector<double> sizes;
    QXmlStreamReader xml(outputOf(QStringLiteral("mutool"), {QStringLiteral("draw"), QStringLiteral("-F"),
                                                             QStringLiteral("stext"), pdf}));
    QString line;
    double size = 0;
    double first = 0;  // that the line begins with
    while (!xml.atEnd()) {
        xml.readNext();
        const QString name = xml.name().toString();
        if (xml.isStartElement() && name == QLatin1String("page")) sizes.push_back(0);
        if (xml.isStartElement() && name == QLatin1String("line")) line.clear();
        if (xml.isStartElement() && name == QLatin1String("font")) {
            size = xml.attributes().value(QLatin1String("size")).toDouble() * kMmPerPoint;
        }
        if (xml.isStartElement() && name == QLatin1String("char") && line.isEmpty()) first = size;
        if (xml.isStartElement() && name == QLatin1String("char")) line += xml.attributes().value(QLatin1String("c"));
        if (xml.isEndElement() && name == QLatin1String("line") && line.startsWith(words)) {
            sizes.back() = std::max(sizes.back(), first);
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return sizes;
}

QString textOf(const QString& pdf) {
    const QString text =
        QString::fromUtf8(outputOf(QStringLiteral("mutool"), {QStringLiteral("draw"), QStringLiteral("-F"),
                                                              QStringLiteral("text"), pdf}));
    return text.simplified();
}

}  // namespace kerfwall
