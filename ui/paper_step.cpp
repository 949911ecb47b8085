// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_step.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <utility>

#include "core/drawing/step_drawing.h"
#include "ui/painter.h"
#include "ui/paper_setting.h"

namespace kerfwall {
namespace {

// mm.
constexpr double kIndent = 13;
constexpr double kPictureWide = 46;      // of the smallest
constexpr double kFiguresWide = 38;       // one or two settings, one under the other
constexpr double kMoreFiguresWide = 62;   // more of them, in pairs
constexpr double kTightStep = 1.25;       // from line to line, in the letters' height
constexpr double kPictureHigh = 29;      // at most; of a kerf, of marks
constexpr double kSmallPictureHigh = 23;  // ... of another step
constexpr double kPictureUnit = 0.5;     // its lines and letters, finer than the pattern's
constexpr double kBetween = 4;           // the words and the picture
constexpr double kBox = 6.5;             // to tick
constexpr double kFigureGap = 5;
constexpr double kUnderFigure = 1.2;
constexpr double kBlankHigh = 5.5;
constexpr double kBlank = 24;            // to write a measure on
const Lettering kNumber{8, true};
const Lettering kTitle{4, true};
const Lettering kCaption{2.6};
const Lettering kFigure{8, true};
const Lettering kUnit{4.6, true};
const Lettering kLie{2.6, true};
const Lettering kText{2.6};

struct Word {
    QPointF at;  // from the block's top-left corner
    QString text;
    Lettering lettering;
};

/// A column of words, laid out from `top`, `left` to `right` from the block's left edge.
class Words {
  public:
    Words(double left, double right, double top) : m_left(left), m_right(right), m_at(top) {}

    void paragraph(const QString& text, const Lettering& lettering) {
        for (const QString& line : brokenLines(text, width(), lettering)) addLine(line, lettering);
    }
    void addLine(const QString& line, const Lettering& lettering) {
        m_words.push_back({{m_left, m_at + lettering.height}, line, lettering});
        m_at += lettering.height * kTightStep;
    }
    /// Each under its caption; the next beside it where there is room.
    void figures(const std::vector<SettingFigure>& figures) {
        double x = m_left;
        double foot = m_at;  // of the row
        for (const SettingFigure& each : figures) {
            const QString unit = each.unit == QStringLiteral("\"") ? each.unit : QLatin1Char(' ') + each.unit;
            const bool isNumber = std::ranges::any_of(each.value, [](QChar letter) { return letter.isDigit(); });
            const Lettering& lettering = isNumber ? kFigure : kUnit;
            const QStringList caption = brokenLines(each.caption, width(), kCaption);
            const double value = widthOf(each.value, lettering);
            double wide = value + widthOf(unit, kUnit);
            for (const QString& line : caption) wide = std::max(wide, widthOf(line, kCaption));
            if (x > m_left && (x + wide > m_right || caption.size() > 1)) {
                x = m_left;
                m_at = foot;
            }
            double y = m_at;
            for (const QString& line : caption) {
                m_words.push_back({{x, y + kCaption.height}, line, kCaption});
                y += kCaption.height * (&line == &caption.back() ? 1 : kTightStep);
            }
            y += lettering.height;
            m_words.push_back({{x, y}, each.value, lettering});
            m_words.push_back({{x + value, y}, unit, kUnit});
            foot = std::max(foot, y + kUnderFigure);
            x += wide + kFigureGap;
        }
        m_at = foot;
    }
    void space(double mm) { m_at += mm; }
    [[nodiscard]] double at() const { return m_at; }
    [[nodiscard]] double width() const { return m_right - m_left; }
    [[nodiscard]] const std::vector<Word>& words() const { return m_words; }

  private:
    double m_left;
    double m_right;
    double m_at;
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

Picture pictureOf(const Project& project, const Solved& solved, const OrderOfWork& order, std::size_t index,
                  double larger) {
    const Task task = order.steps[index].task;
    const double most = larger * (task == Task::Kerf || task == Task::Mark ? kPictureHigh : kSmallPictureHigh);
    const double wide = larger * kPictureWide;
    const double unit = kPictureUnit * std::sqrt(larger);
    const StepRoom room = stepRoom(project, solved, order, index);
    const double scale = fittingScale(room, wide / unit, most / unit);
    Picture picture{stepDrawing(project, solved, order, index, scale), {}, 0};
    const double perMm = unit / scale;
    const Box& bounds = picture.drawing.bounds;
    picture.height = (bounds.high.y - bounds.low.y) * perMm;
    const double aside = (wide - (bounds.high.x - bounds.low.x) * perMm) / 2;
    picture.view = {{aside - bounds.low.x * perMm, bounds.high.y * perMm}, perMm, perMm, unit, 1, false};
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

double blanksWidth(const QStringList& names) {
    double taken = widthOf(PaperWords::tr("Measured "), kText);
    for (const QString& name : names) taken += widthOf(name, kText) + 1 + kBlank + 4;
    return taken - 4;
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
        while (!names.isEmpty() && blanksWidth(row + QStringList{names.front()}) <= column.width() - kIndent) row << names.takeFirst();
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
QString addBeside(Words& words, const QString& text, double foot) {
    constexpr int kWidows = 2;  // last lines that do not go alone under the picture
    QStringList parts = text.split(QLatin1Char('\n'));
    while (!parts.isEmpty()) {
        QStringList lines = brokenLines(parts.takeFirst(), words.width(), kText);
        const auto hasRoom = [&] { return words.at() + kText.height * kTightStep <= foot; };
        while (!lines.isEmpty() && (hasRoom() || (parts.isEmpty() && lines.size() <= kWidows))) {
            words.addLine(lines.takeFirst(), kText);
        }
        if (lines.isEmpty()) continue;
        parts.prepend(lines.join(QLatin1Char(' ')));
        return parts.join(QLatin1Char('\n'));
    }
    return {};
}

double figureWidth(const SettingFigure& figure) {
    const bool isNumber = std::ranges::any_of(figure.value, [](QChar letter) { return letter.isDigit(); });
    return widthOf(figure.value, isNumber ? kFigure : kUnit) + widthOf(QLatin1Char(' ') + figure.unit, kUnit);
}

/// How wide the settings stand: one or two in a column, more in pairs, and where pairs are too wide across the whole step.
double figuresRoom(const std::vector<SettingFigure>& settings, double whole) {
    double widest = 0;
    for (const SettingFigure& each : settings) widest = std::max(widest, figureWidth(each));
    if (settings.size() <= 2) return std::max(kFiguresWide, widest);
    return 2 * widest + kFigureGap > kMoreFiguresWide ? whole : kMoreFiguresWide;
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
                  std::size_t index, double pictures) {
    const WorkStep& step = order.steps.at(index);
    const auto picture = std::make_shared<Picture>();
    const bool hasPicture = isPictured(step);
    if (hasPicture) *picture = pictureOf(project, solved, order, index, pictures);
    const double wide = column.width() - (hasPicture ? pictures * kPictureWide + kBetween : 0);
    //  1  title                measured ____   picture
    //  [] figures     how it lies, what is done
    //     what is done, gone on with
    Words title(kIndent, wide, 0);
    title.paragraph(stepTitle(project, step), kTitle);
    title.space(0.6);
    const std::vector<SettingFigure> settings = settingFigures(project, solved, step);
    const double figuresWide = figuresRoom(settings, wide - kIndent);
    const bool isAcross = figuresWide > kMoreFiguresWide;
    Words figures(kIndent, kIndent + figuresWide, title.at());
    figures.figures(settings);
    const bool isUnder = settings.empty() || isAcross;
    Words said(isUnder ? kIndent : kIndent + figuresWide + kBetween, wide, isUnder ? figures.at() : title.at());
    said.paragraph(lieWords(step).join(QStringLiteral(" \u00b7 ")), kLie);
    const double least = std::max({picture->height, kBox + 11, figures.at()});
    const QString rest = addBeside(said, saidOf(step), least);
    const double high = std::max(least, said.at());
    const QStringList under = brokenLines(rest, column.width() - kIndent, kText);
    const double lineHigh = kText.height * kTightStep;
    std::vector<Word> words;
    for (const Words* each : {&title, &figures, &said}) words.insert(words.end(), each->words().begin(), each->words().end());
    constexpr double kRule = 1.6;
    const QStringList measures = toMeasure(step);
    const double blanks = blanksWidth(measures);
    const bool isBeside = !measures.isEmpty() && kIndent + widthOf(stepTitle(project, step), kTitle) + kFigureGap + blanks <= wide;
    const QStringList measuredUnder = isBeside ? QStringList() : measures;
    constexpr double kMostUnder = 50;  // of a longer text the end may stand on the next page
    column.keepTogether(kRule + high + std::min(kMostUnder, lineHigh * static_cast<double>(under.size()) + (measuredUnder.isEmpty() ? 0 : kBlankHigh)));
    column.block(kRule, [left = column.left(), right = column.right()](QPainter& painter, double top) {
        painter.setPen(QPen(paletteOf(PaletteKind::Paper).hatch, 0.25));
        painter.drawLine(QLineF(left, top, right, top));
    });
    column.block(high, [=, left = column.left(), right = column.right(), number = step.number](QPainter& painter, double top) {
        paintHead(painter, left, top, number);
        for (const Word& word : words) writeText(painter, word.at + QPointF(left, top), word.text, word.lettering);
        if (isBeside) paintBlanks(painter, {left + wide - blanks, top + kTitle.height}, measures);
        if (hasPicture) paintPicture(painter, {right - pictures * kPictureWide, top}, *picture);
    });
    for (const QString& line : under) {
        column.block(lineHigh, [line, left = column.left() + kIndent](QPainter& painter, double top) { writeText(painter, {left, top + kText.height}, line, kText); });
    }
    addBlanks(column, measuredUnder);
    column.space(1);
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
