// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/line_form.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "ui/length_field.h"
#include "ui/selection.h"
#include "ui/session.h"
#include "ui/trouble_text.h"

namespace kerfwall {
namespace {

constexpr int kFieldWidth = 190;

}  // namespace

LineForm::LineForm(Session& session, Selection& selection, QWidget* parent)
    : QFrame(parent), m_session(session), m_selection(selection), m_grid(new QGridLayout(this)), m_heading(new QLabel(this)),
      m_trouble(new QLabel(this)) {
    setObjectName(QStringLiteral("lineForm"));
    m_grid->setContentsMargins(0, 0, 0, 18);
    m_grid->setVerticalSpacing(6);
    m_grid->setColumnStretch(0, 1);
    m_heading->setObjectName(QStringLiteral("sectionTitle"));
    auto* done = new QPushButton(tr("Done"), this);
    done->setObjectName(QStringLiteral("formDone"));
    m_grid->addWidget(m_heading, 0, 0);
    m_grid->addWidget(done, 0, 1);
    m_trouble->setWordWrap(true);
    m_trouble->setObjectName(QStringLiteral("lineTrouble"));
    m_trouble->setProperty("trouble", true);
    m_grid->addWidget(m_trouble, 1, 0, 1, 2);
    for (const LineRow& row : lineRows()) addRow(row);
    connect(done, &QPushButton::clicked, this, &LineForm::closeAsked);
    connect(&m_session, &Session::changed, this, &LineForm::refresh);
    connect(&m_selection, &Selection::changed, this, &LineForm::refresh);
    hide();
}

QWidget* LineForm::Row::widget() const {
    if (words) return words;
    return choice ? static_cast<QWidget*>(choice) : number;
}

void LineForm::addRow(const LineRow& of) {
    Row row{of, new QLabel(this), nullptr, nullptr, nullptr};
    if (of.kind == LineRow::Kind::Words) {
        row.words = new QLineEdit(this);
        connect(row.words, &QLineEdit::editingFinished, this, [this, of, field = row.words] {
            if (!field->isModified()) return;
            field->setModified(false);
            set(of, field->text().trimmed());
        });
    } else if (of.kind == LineRow::Kind::Choice) {
        row.choice = new QComboBox(this);
        connect(row.choice, &QComboBox::activated, this, [this, of](int option) { set(of, option); });
    } else {
        row.number = new LengthField(this);
        connect(row.number, &LengthField::entered, this, [this, of](std::optional<double> value) {
            if (value) set(of, *value);
        });
        connect(row.number, &LengthField::troubled, this, &LineForm::tell);
        connect(row.number, &LengthField::left, this, &LineForm::closeAsked);
    }
    QWidget* widget = row.widget();
    widget->setObjectName(of.name);
    widget->setFixedWidth(kFieldWidth);
    row.label->setBuddy(widget);
    row.label->setWordWrap(true);
    const int at = m_grid->rowCount();
    m_grid->addWidget(row.label, at, 0);
    m_grid->addWidget(widget, at, 1);
    m_rows.push_back(row);
}

const LayoutLine* LineForm::line() const { return findLine(m_session.project(), m_selection.line()); }

void LineForm::tell(const QString& sentence) {
    m_refused = sentence;
    const LayoutLine* of = line();
    QString told = sentence;
    if (told.isEmpty() && of) told = troubleText(m_session.solved(), of->id);
    if (told.isEmpty() && !of) told = tr("Pick a line: how it was laid stands here.");
    m_trouble->setText(told);
    m_trouble->setVisible(!told.isEmpty());
}

void LineForm::set(const LineRow& row, const RowValue& value) {
    const LayoutLine* of = line();
    if (!of) return;
    const LineId id = of->id;
    const std::size_t index = static_cast<std::size_t>(of - m_session.project().lines.data());
    const auto next = row.set({m_session.project(), m_session.solved(), *of}, value);
    if (!next) {
        tell(next.error());
        return;
    }
    m_refused.clear();
    m_session.change(tr("Set line %1").arg(QString::fromStdString(id)), *next);
    // It may go by another name now.
    if (index < m_session.project().lines.size()) m_selection.pickLine(m_session.project().lines[index].id);
    refresh();
}

void LineForm::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    refresh();
}

void LineForm::refresh() {
    if (isHidden()) return;
    const LayoutLine* of = line();
    const LineId shown = of ? of->id : LineId{};
    if (shown != m_shown) m_refused.clear();
    m_shown = shown;
    m_heading->setText(of ? tr("Line %1").arg(QString::fromStdString(of->id)) : tr("Line"));
    for (const Row& row : m_rows) {
        const bool isShown = of && row.row.isShown({m_session.project(), m_session.solved(), *of});
        row.label->setVisible(isShown);
        row.widget()->setVisible(isShown);
        if (isShown) refreshRow(row, {m_session.project(), m_session.solved(), *of});
    }
    tell(m_refused);
}

void LineForm::refreshRow(const Row& row, const LineView& view) {
    const QString label = row.row.label(view);
    row.label->setText(label);
    row.widget()->setAccessibleName(label);
    if (row.words && !row.words->isModified()) row.words->setText(row.row.words(view));
    if (row.number) {
        const EntryField field = *row.row.number(view);
        row.number->setKind(field.kind == EntryField::Kind::Angle ? LengthField::Kind::Angle : LengthField::Kind::Length);
        row.number->setUnits(m_session.project().units);
        row.number->show(field.value);
    }
    if (row.choice) {
        const QStringList options = row.row.options(view);
        QStringList there;
        for (int i = 0; i < row.choice->count(); ++i) there << row.choice->itemText(i);
        if (there != options) {
            row.choice->clear();
            row.choice->addItems(options);
        }
        row.choice->setCurrentIndex(row.row.chosen(view));
    }
}

void LineForm::focusFirst() {
    for (const Row& row : m_rows) {
        if (row.widget()->isHidden()) continue;
        return row.widget()->setFocus(Qt::ShortcutFocusReason);
    }
}

}  // namespace kerfwall
