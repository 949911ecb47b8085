// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/papers/text_boxes.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QStringList>
#include <QXmlStreamReader>
#include <algorithm>
#include <cmath>

#include "tests/ui/papers/read_paper.h"

namespace kerfwall {
namespace {

constexpr double kMmPerPoint = 25.4 / 72;

}  // namespace

std::vector<TextBox> textBoxesOf(const QString& pdf) {
    std::vector<TextBox> boxes;
    QXmlStreamReader xml(outputOf(QStringLiteral("mutool"), {QStringLiteral("draw"), QStringLiteral("-F"), QStringLiteral("stext"), pdf}));
    int page = 0;
    double size = 0;
    while (!xml.atEnd()) {
        xml.readNext();
        if (!xml.isStartElement()) continue;
        const auto value = [&](const char* name) { return xml.attributes().value(QLatin1String(name)).toString(); };
        if (xml.name() == QLatin1String("page")) ++page;
        if (xml.name() == QLatin1String("font")) boxes.push_back({page, {}, {}});
        if (xml.name() == QLatin1String("font")) size = value("size").toDouble() * kMmPerPoint;
        if (xml.name() != QLatin1String("char")) continue;
        const QStringList quad = value("quad").split(QLatin1Char(' '));
        const double left = quad[0].toDouble() * kMmPerPoint;
        const double right = quad[2].toDouble() * kMmPerPoint;
        const double foot = value("y").toDouble() * kMmPerPoint;
        boxes.back().text += value("c");
        if (value("c").trimmed().isEmpty()) continue;
        boxes.back().box |= QRectF(left, foot - 0.7 * size, right - left, 0.7 * size);
    }
    std::erase_if(boxes, [](const TextBox& box) { return box.box.isEmpty(); });
    return boxes;
}

QString overlapIn(const std::vector<TextBox>& boxes) {
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        for (std::size_t j = i + 1; j < boxes.size(); ++j) {
            const QRectF both = boxes[i].box & boxes[j].box;
            if (boxes[i].page == boxes[j].page && both.width() > 0.2 && both.height() > 0.2) return boxes[i].text + QStringLiteral(" | ") + boxes[j].text;
        }
    }
    return {};
}

QString closedUp(QString text) {
    text.removeIf([](QChar letter) { return letter.isSpace(); });
    return text;
}

QString fourTenthsLonger(const QString& text) {
    QStringList words = text.split(QLatin1Char(' '));
    const auto length = [](const QString& word) { return word.contains(QLatin1Char('%')) ? 0 : word.size(); };
    const auto longest = std::ranges::max_element(words, {}, length);
    const auto more = static_cast<qsizetype>(std::ceil(0.4 * static_cast<double>(text.size())));
    if (length(*longest) > 1) longest->insert(1, QString(more, QLatin1Char('n')));
    return words.join(QLatin1Char(' '));
}

LongWords::LongWords() { QCoreApplication::installTranslator(this); }
LongWords::~LongWords() { QCoreApplication::removeTranslator(this); }

QString LongWords::translate(const char*, const char* source, const char*, int) const { return fourTenthsLonger(QString::fromUtf8(source)); }

}  // namespace kerfwall
