// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_text.h"

#include <QDir>
#include <QFontMetricsF>

#include "ui/lettering.h"

namespace kerfwall {

double widthOf(const QString& text, const Lettering& lettering) {
    return QFontMetricsF(letteringFont(lettering.bold)).horizontalAdvance(text) * lettering.height /
           kLetteringSize;
}

void writeText(QPainter& painter, QPointF at, const QString& text, const Lettering& lettering) {
    const double scale = lettering.height / kLetteringSize;
    painter.save();
    painter.translate(at);
    painter.rotate(-lettering.turn);
    painter.scale(scale, scale);
    painter.setFont(letteringFont(lettering.bold));
    painter.setPen(lettering.colour);
    const double width = QFontMetricsF(painter.font()).horizontalAdvance(text);
    const double left = lettering.anchor == Anchor::Left     ? 0
                        : lettering.anchor == Anchor::Middle ? -width / 2
                                                             : -width;
    painter.drawText(QPointF(left, 0), text);
    painter.restore();
}

namespace {

/// One part of a text that has no line break of its own.
QStringList brokenPart(const QString& text, double width, const Lettering& lettering) {
    QStringList lines;
    QString line;
    const QStringList words = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (QString word : words) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (widthOf(longer, lettering) <= width) {
            line = longer;
            continue;
        }
        if (!line.isEmpty()) lines.append(line);
        while (word.size() > 1 && widthOf(word, lettering) > width) {
            qsizetype fitting = word.size() - 1;
            while (fitting > 1 && widthOf(word.left(fitting), lettering) > width) --fitting;
            lines.append(word.left(fitting));
            word = word.mid(fitting);
        }
        line = word;
    }
    if (!line.isEmpty()) lines.append(line);
    return lines;
}

}  // namespace

QStringList brokenLines(const QString& text, double width, const Lettering& lettering) {
    QStringList lines;
    for (const QString& part : text.split(QLatin1Char('\n'))) lines += brokenPart(part, width, lettering);
    return lines;
}

QString shortened(const QString& text, double width, const Lettering& lettering) {
    if (widthOf(text, lettering) <= width) return text;
    QString part = text;
    const QString rest = QStringLiteral("\u2026");
    while (!part.isEmpty() && widthOf(part + rest, lettering) > width) part.chop(1);
    return part.trimmed() + rest;
}

QString unwrittenSentence(const QString& path, const QString& why) {
    return PaperWords::tr("%1 could not be written (%2); choose another folder or make room, and try again.").arg(QDir::toNativeSeparators(path), why);
}

}  // namespace kerfwall
