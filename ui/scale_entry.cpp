// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/scale_entry.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>

#include "ui/length_field.h"
#include "ui/paper_pattern.h"
#include "ui/printers.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

constexpr int kFieldWidth = 104;
constexpr double kShortestBar = 10, kLongestBar = 3000;  // mm

QString factorText(double factor) { return QString::number(factor, 'f', 4); }

QLabel* wordsIn(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    return label;
}

}  // namespace

ScaleEntry::ScaleEntry(Session& session, QWidget* parent)
    : QFrame(parent),
      m_session(session),
      m_grid(new QGridLayout(this)),
      m_trouble(wordsIn({}, this)),
      m_now(wordsIn({}, this)),
      m_useKept(new QPushButton(this)),
      m_none(new QPushButton(tr("Take the correction out"), this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setVerticalSpacing(6);
    m_grid->setColumnStretch(0, 1);
    auto* heading = new QLabel(tr("True to size"), this);
    heading->setObjectName(QStringLiteral("groupTitle"));
    heading->setIndent(0);
    auto* how = wordsIn(tr("Measure the scale bars of a print made as it is set here, from first tick to last, and enter what the ruler says."), this);
    how->setObjectName(QStringLiteral("faint"));
    m_grid->addWidget(heading, 0, 0, 1, 3);
    m_grid->addWidget(how, 1, 0, 1, 3);
    m_grid->addWidget(new QLabel(tr("it is told to be"), this), 2, 1);
    m_grid->addWidget(new QLabel(tr("it measures"), this), 2, 2);
    addRow(tr("Level bar"), Level, "level");
    addRow(tr("Upright bar"), Upright, "upright");
    m_trouble->setObjectName(QStringLiteral("scaleTrouble"));
    m_trouble->setProperty("trouble", true);
    m_now->setObjectName(QStringLiteral("scaleNow"));
    m_useKept->setObjectName(QStringLiteral("scaleUseKept"));
    m_none->setObjectName(QStringLiteral("scaleNone"));
    m_grid->addWidget(m_trouble, 5, 0, 1, 3);
    m_grid->addWidget(m_now, 6, 0, 1, 3);
    m_grid->addWidget(m_useKept, 7, 0, 1, 3);
    m_grid->addWidget(m_none, 8, 0, 1, 3);
    connect(m_useKept, &QPushButton::clicked, this, &ScaleEntry::takeKept);
    connect(m_none, &QPushButton::clicked, this, [this] {
        setScale(tr("Take the correction out"), {});
        measureAnew();
    });
    tell({});
}

void ScaleEntry::addRow(const QString& words, Axis axis, const char* name) {
    auto* label = new QLabel(words, this);
    Row& row = m_rows[axis];
    row = {new LengthField(this), new LengthField(this)};
    row.nominal->setObjectName(QString::fromLatin1(name) + QStringLiteral("Nominal"));
    row.nominal->setAccessibleName(tr("%1, what it is told to be").arg(words));
    row.nominal->setRange(kShortestBar, kLongestBar, tr("A scale bar is 10 to 3000 mm long."));
    row.measured->setObjectName(QString::fromLatin1(name) + QStringLiteral("Measured"));
    row.measured->setAccessibleName(tr("%1, what it measures").arg(words));
    row.measured->setMayBeEmpty(true);
    row.measured->setRange(1, 2 * kLongestBar, tr("A scale bar measures more than 1 mm."));
    label->setBuddy(row.measured);
    const int at = 3 + axis;
    m_grid->addWidget(label, at, 0);
    m_grid->addWidget(row.nominal, at, 1);
    m_grid->addWidget(row.measured, at, 2);
    for (LengthField* field : {row.nominal, row.measured}) {
        field->setFixedWidth(kFieldWidth);
        connect(field, &LengthField::left, this, &ScaleEntry::closeAsked);
        connect(field, &LengthField::troubled, this, [this](const QString& sentence) {
            tell(sentence);
        });
    }
    connect(row.measured, &LengthField::entered, this, [this, axis](std::optional<double> value) { take(axis, value); });
}

PrintScale ScaleEntry::scale() const {
    const Printing& printing = m_session.project().printing;
    return {printing.scaleX, printing.scaleY};
}

void ScaleEntry::setScale(const QString& step, const PrintScale& scale) {
    keepScale(m_printer, scaleOnPaper(scale, m_sheets.paper));
    Project next = m_session.project();
    next.printing.scaleX = scale.x;
    next.printing.scaleY = scale.y;
    m_session.change(step, next);
    refresh();
}

/// Corrects the print that was measured, so a reading entered twice, or mended, is not corrected twice.
void ScaleEntry::take(Axis axis, std::optional<double> measured) {
    const auto nominal = m_rows[axis].nominal->value();
    if (!measured || !nominal) return;
    PrintScale now = scale();
    const auto correction = correctionFrom({*nominal, *measured}, axis == Level ? m_printed.x : m_printed.y);
    if (!correction) return tell(QString::fromStdString(correction.error()));
    (axis == Level ? now.x : now.y) = correction->factor;
    tell(QString::fromStdString(correction->remark));
    setScale(axis == Level ? tr("Correct the print across") : tr("Correct the print up"), now);
}

void ScaleEntry::takeKept() {
    const auto kept = keptScale(m_printer);
    measureAnew();
    if (kept) setScale(tr("Take what was measured off the printer"), scaleOnPaper(*kept, m_sheets.paper));
}

void ScaleEntry::tell(const QString& sentence) {
    m_trouble->setText(sentence);
    m_trouble->setVisible(!sentence.isEmpty());
}

void ScaleEntry::show(const Sheets& sheets, const QString& printer) {
    const bool isOther = printer != m_printer || sheets.paper != m_sheets.paper;
    m_sheets = sheets;
    m_printer = printer;
    if (isOther) measureAnew();
    const Project& project = m_session.project();
    const ScaleBars bars = scaleBarsOf(sheets, project.printing, project.units);
    for (const Row& row : m_rows) {
        row.nominal->setUnits(project.units);
        row.measured->setUnits(project.units);
    }
    if (!isRead()) {
        m_rows[Level].nominal->show(bars.level);
        m_rows[Upright].nominal->show(bars.upright);
    }
    refresh();
}

bool ScaleEntry::isRead() const { return m_rows[Level].measured->value() || m_rows[Upright].measured->value(); }

void ScaleEntry::measureAnew() {
    tell({});
    m_printed = scale();
    for (const Row& row : m_rows) row.measured->showAnyway(std::nullopt);
}

void ScaleEntry::refresh() {
    const PrintScale now = scale();
    const bool plain = now == PrintScale{};
    m_now->setText(plain ? tr("Nothing is corrected yet: the pattern is sent as large as it is.")
                         : tr("The next print is made %1 times as wide and %2 times as high; measure that one anew.").arg(factorText(now.x), factorText(now.y)));
    m_none->setVisible(!plain);
    const auto kept = keptScale(m_printer);
    const PrintScale here = kept ? scaleOnPaper(*kept, m_sheets.paper) : now;
    m_useKept->setVisible(here != now);
    m_useKept->setText(tr("Take what was measured here: %1 by %2").arg(factorText(here.x), factorText(here.y)));
}

}  // namespace kerfwall
