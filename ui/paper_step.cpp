// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_step.h"

#include <algorithm>
#include <memory>
#include <utility>

#include "core/drawing/step_drawing.h"
#include "ui/painter.h"
#include "ui/paper_setting.h"

namespace kerfwall {
namespace {

// mm.
constexpr double kIndent = 13;
constexpr double kPictureWide = 62;
constexpr double kPictureHigh = 48;      // at most; of a kerf, of marks
constexpr double kSmallPictureHigh = 38;  // ... of another step
constexpr double kPictureUnit = 0.55;    // its lines and letters, finer than the pattern's
constexpr double kBetween = 4;           // the words and the picture
constexpr double kBox = 6.5;             // to tick
constexpr double kFigureGap = 6;
constexpr double kBlankHigh = 6;
constexpr double kBlank = 24;            // to write a measure on
const Lettering kNumber{8, true};
const Lettering kTitle{4.2, true};
const Lettering kCaption{3};
const Lettering kFigure{8, true};
const Lettering kUnit{4.6, true};
const Lettering kLie{2.9, true};
const Lettering kText{2.9};

struct Word {
    QPointF at;  // from the block's top-left corner
    QString text;
    Lettering lettering;
};

/// The words beside the picture, laid out from the top.
class Words {
  public:
    explicit Words(double width) : m_width(width) {}

    void paragraph(const QString& text, const Lettering& lettering) {
        for (const QString& line : brokenLines(text, m_width - kIndent, lettering)) addLine(line, lettering);
    }
    void addLine(const QString& line, const Lettering& lettering) {
        m_words.push_back({{kIndent, m_at + lettering.height}, line, lettering});
        m_at += lettering.height * kLineStep;
    }
    /// Each under its caption; the next beside it where there is room.
    void figures(const std::vector<SettingFigure>& figures) {
        if (figures.empty()) return;
        const double high = kCaption.height + kFigure.height * kLineStep;
        double x = kIndent;
        for (const SettingFigure& each : figures) {
            const QString unit = each.unit == QStringLiteral("\"") ? each.unit : QLatin1Char(' ') + each.unit;
            const bool isNumber = std::ranges::any_of(each.value, [](QChar letter) { return letter.isDigit(); });
            const Lettering& lettering = isNumber ? kFigure : kUnit;
            const double value = widthOf(each.value, lettering);
            const double wide = std::max(widthOf(each.caption, kCaption), value + widthOf(unit, kUnit));
            if (x > kIndent && x + wide > m_width) {
                x = kIndent;
                m_at += high;
            }
            m_words.push_back({{x, m_at + kCaption.height}, each.caption, kCaption});
            const double foot = m_at + kCaption.height + kFigure.height;
            m_words.push_back({{x, foot}, each.value, lettering});
            m_words.push_back({{x + value, foot}, unit, kUnit});
            x += wide + kFigureGap;
        }
        m_at += high;
    }
    void space(double mm) { m_at += mm; }
    [[nodiscard]] double at() const { return m_at; }
    [[nodiscard]] const std::vector<Word>& words() const { return m_words; }

  private:
    double m_width;
    double m_at = 0;
    std::vector<Word> m_words;
};

struct Picture {
    Drawing drawing;
    View view;
    double height = 0;  // mm
};

bool isPictured(const WorkStep& step) {
    return step.task != Task::Label && !(step.task == Task::Mark && step.see.empty());
}

Picture pictureOf(const Project& project, const Solved& solved, const OrderOfWork& order, std::size_t index) {
    const Task task = order.steps[index].task;
    const double most = task == Task::Kerf || task == Task::Mark ? kPictureHigh : kSmallPictureHigh;
    const StepRoom room = stepRoom(project, solved, order, index);
    const double scale = fittingScale(room, kPictureWide / kPictureUnit, most / kPictureUnit);
    Picture picture{stepDrawing(project, solved, order, index, scale), {}, 0};
    const double perMm = kPictureUnit / scale;
    const Box& bounds = picture.drawing.bounds;
    picture.height = (bounds.high.y - bounds.low.y) * perMm;
    const double aside = (kPictureWide - (bounds.high.x - bounds.low.x) * perMm) / 2;
    picture.view = {{aside - bounds.low.x * perMm, bounds.high.y * perMm}, perMm, perMm, kPictureUnit, 1, false};
    return picture;
}

/// "Measured A ____ B ____": only where there is something to measure.
QStringList toMeasure(const WorkStep& step) {
    QStringList names;
    if (step.task == Task::Kerf) {
        for (const LineId& line : step.lines) names << QString::fromStdString(line);
        names.removeDuplicates();
    } else if (step.task == Task::Bore || step.task == Task::Trim || step.task == Task::Hole) {
        names << QString();
    }
    return names;
}

/// Where one row of blanks is enough beside the picture, it stands there.
bool fitsBeside(const QStringList& names, double wide) {
    double taken = kIndent + widthOf(PaperWords::tr("Measured "), kText);
    for (const QString& name : names) taken += widthOf(name, kText) + 1 + kBlank + 4;
    return !names.isEmpty() && taken <= wide;
}

void paintBlanks(QPainter& painter, QPointF at, const QStringList& names) {
    const QString first = PaperWords::tr("Measured ");
    writeText(painter, at, first, kText);
    double x = at.x() + widthOf(first, kText);
    painter.setPen(QPen(Qt::black, 0.25));
    for (const QString& name : names) {
        writeText(painter, {x, at.y()}, name, kText);
        x += widthOf(name, kText) + 1;
        painter.drawLine(QLineF(x, at.y() + 0.6, x + kBlank, at.y() + 0.6));
        x += kBlank + 4;
    }
}

/// Rows of them, as many to a row as there is room for.
void addBlanks(PaperColumn& column, QStringList names) {
    while (!names.isEmpty()) {
        QStringList row{names.takeFirst()};
        while (!names.isEmpty() && fitsBeside(row + QStringList{names.front()}, column.width())) row << names.takeFirst();
        column.block(kBlankHigh, [row, left = column.left() + kIndent](QPainter& painter, double top) {
            paintBlanks(painter, {left, top + 4.2}, row);
        });
    }
}

QString saidOf(const WorkStep& step) {
    const QString text = QString::fromStdString(step.text);
    return step.because.empty() ? text : text + QLatin1Char('\n') + QString::fromStdString(step.because);
}

/// Adds the text's lines down to `foot`, and gives what is left of it.
QString addBeside(Words& words, const QString& text, double wide, double foot) {
    constexpr int kWidows = 2;  // last lines that do not go alone under the picture
    QStringList parts = text.split(QLatin1Char('\n'));
    while (!parts.isEmpty()) {
        QStringList lines = brokenLines(parts.takeFirst(), wide - kIndent, kText);
        const auto hasRoom = [&] { return words.at() + kText.height * kLineStep <= foot; };
        while (!lines.isEmpty() && (hasRoom() || (parts.isEmpty() && lines.size() <= kWidows))) {
            words.addLine(lines.takeFirst(), kText);
        }
        if (lines.isEmpty()) continue;
        parts.prepend(lines.join(QLatin1Char(' ')));
        return parts.join(QLatin1Char('\n'));
    }
    return {};
}

void paintHead(QPainter& painter, double left, double top, int number) {
    writeText(painter, {left, top + 7}, QString::number(number), kNumber);
    painter.setPen(QPen(Qt::black, 0.35));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(left + 0.3, top + 10, kBox, kBox));
}

void paintPicture(QPainter& painter, QPointF at, const Picture& picture) {
    painter.save();
    painter.translate(at);
    paintDrawing(painter, picture.drawing, paletteOf(PaletteKind::Paper), picture.view);
    painter.restore();
}

}  // namespace

void addPaperStep(PaperColumn& column, const Project& project, const Solved& solved, const OrderOfWork& order,
                  std::size_t index) {
    const WorkStep& step = order.steps.at(index);
    const auto picture = std::make_shared<Picture>();
    const bool hasPicture = isPictured(step);
    if (hasPicture) *picture = pictureOf(project, solved, order, index);
    const double wide = column.width() - (hasPicture ? kPictureWide + kBetween : 0);
    auto words = std::make_shared<Words>(wide);
    words->paragraph(stepTitle(project, step), kTitle);
    words->space(0.8);
    words->figures(settingFigures(project, solved, step));
    words->paragraph(lieWords(step).join(QStringLiteral(" \u00b7 ")), kLie);
    words->space(0.6);
    // Beside the picture as far as it goes, the rest under it.
    const double least = std::max({picture->height, kBox + 11, words->at()});
    const QString rest = addBeside(*words, saidOf(step), wide, least);
    const QStringList measures = toMeasure(step);
    const bool isBeside = rest.isEmpty() && fitsBeside(measures, wide);
    if (isBeside) words->space(kBlankHigh);
    const double high = std::max(least, words->at());
    const double under = column.paragraphHeight(rest, kText, kIndent) + (measures.isEmpty() || isBeside ? 0 : kBlankHigh);
    constexpr double kRule = 2;
    column.keepTogether(kRule + high + std::min(under, 40.0));
    column.block(kRule, [left = column.left(), right = column.right()](QPainter& painter, double top) {
        painter.setPen(QPen(paletteOf(PaletteKind::Paper).hatch, 0.25));
        painter.drawLine(QLineF(left, top, right, top));
    });
    column.block(high, [=, left = column.left(), right = column.right(), number = step.number](QPainter& painter, double top) {
        paintHead(painter, left, top, number);
        for (const Word& word : words->words()) writeText(painter, word.at + QPointF(left, top), word.text, word.lettering);
        if (isBeside) paintBlanks(painter, {left + kIndent, top + high - 1.5}, measures);
        if (hasPicture) paintPicture(painter, {right - kPictureWide, top}, *picture);
    });
    column.paragraph(rest, kText, kIndent);
    if (!isBeside) addBlanks(column, measures);
    column.space(1.5);
}

QString numbersInWords(const std::vector<int>& numbers) {
    QStringList parts;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t end = i;
        while (end + 1 < numbers.size() && numbers[end + 1] == numbers[end] + 1) ++end;
        if (end >= i + 2) {
            parts << PaperWords::tr("%1 to %2").arg(numbers[i]).arg(numbers[end]);
            i = end + 1;
        } else {
            parts << QString::number(numbers[i++]);
        }
    }
    return parts.join(PaperWords::tr(", "));
}

}  // namespace kerfwall
