// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/entry_line.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "ui/length_field.h"

namespace kerfwall {

EntryLine::EntryLine(QWidget* parent)
    : QWidget(parent), m_sentence(new QLabel(this)), m_units(new QPushButton(this)) {
    setObjectName(QStringLiteral("entryLine"));
    setAttribute(Qt::WA_StyledBackground);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(16, 4, 12, 4);
    rows->setSpacing(2);
    auto* says = new QHBoxLayout;
    m_sentence->setObjectName(QStringLiteral("sentence"));
    m_sentence->setWordWrap(true);
    says->addWidget(m_sentence, 1);
    m_units->setObjectName(QStringLiteral("units"));
    m_units->setFlat(true);
    m_units->setAccessibleName(tr("Units shown"));
    says->addWidget(m_units);
    rows->addLayout(says, 1);
    auto* fields = new QHBoxLayout;
    fields->setSpacing(8);
    for (int i = 0; i < kMostFields; ++i) {
        makeSlot(i);
        const Slot& slot = m_slots.at(static_cast<std::size_t>(i));
        fields->addWidget(slot.label);
        fields->addWidget(slot.choice);
        fields->addWidget(slot.field);
    }
    fields->addStretch(1);
    rows->addLayout(fields);
    keepHeight();
    connect(m_units, &QPushButton::clicked, this, &EntryLine::unitsAsked);
}

void EntryLine::resizeEvent(QResizeEvent*) { keepHeight(); }

/// Room for the longest sentence at this width, whatever it says now: the drawing above must not be pushed about.
void EntryLine::keepHeight() {
    constexpr int kLongest = 150;    // letters
    constexpr int kNarrowest = 700;  // pixels: before it is laid out a widget has any width
    const int lines = 1 + kLongest * fontMetrics().averageCharWidth() / (std::max(kNarrowest, width()) - 130);
    const int says = std::max(lines * fontMetrics().lineSpacing() + 2, m_units->sizeHint().height());
    setFixedHeight(says + m_slots.front().field->sizeHint().height() + 10);
}

void EntryLine::makeSlot(int index) {
    Slot& slot = m_slots.at(static_cast<std::size_t>(index));
    slot.label = new QLabel(this);
    slot.field = new LengthField(this);
    slot.field->setObjectName(QStringLiteral("entry%1").arg(index));
    slot.field->setFixedWidth(96);
    slot.choice = new QComboBox(this);
    slot.choice->setObjectName(QStringLiteral("choice%1").arg(index));
    slot.label->setBuddy(slot.field);
    connect(slot.field, &LengthField::typed, this, [this, index](std::optional<double> value) { Q_EMIT typed(index, value); });
    connect(slot.field, &LengthField::entered, this, [this, field = slot.field] {
        if (field->hasFocus()) Q_EMIT entered();
        else Q_EMIT settled();
    });
    connect(slot.field, &LengthField::left, this, &EntryLine::left);
    connect(slot.field, &LengthField::troubled, this, [this](const QString& sentence) {
        m_trouble = sentence;
        showSentence();
    });
    connect(slot.choice, &QComboBox::activated, this, [this, index](int option) { Q_EMIT chose(index, option); });
}

void EntryLine::show(const EntryState& state, Units units) {
    const EntryState before = std::exchange(m_state, state);
    const bool sameSize = state.fields.size() == before.fields.size();
    for (int i = 0; i < kMostFields; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const bool sameKind = sameSize && at < state.fields.size() && state.fields[at].kind == before.fields[at].kind &&
                              state.fields[at].label == before.fields[at].label;
        if (at >= state.fields.size()) {
            m_slots[at].label->hide();
            m_slots[at].field->hide();
            m_slots[at].choice->hide();
            continue;
        }
        showField(i, units, sameKind);
    }
    m_units->setText(units == Units::Inches ? tr("in") : tr("mm"));
    m_units->setToolTip(units == Units::Inches ? tr("Show millimetres") : tr("Show inches"));
    showSentence();
}

void EntryLine::showField(int index, Units units, bool sameKind) {
    const auto at = static_cast<std::size_t>(index);
    const EntryField& field = m_state.fields[at];
    const Slot& slot = m_slots[at];
    slot.label->setText(field.label);
    slot.label->show();
    const bool isChoice = field.kind == EntryField::Kind::Choice;
    slot.choice->setVisible(isChoice);
    slot.field->setVisible(!isChoice);
    if (isChoice) {
        QStringList shown;
        for (int i = 0; i < slot.choice->count(); ++i) shown << slot.choice->itemText(i);
        if (shown != field.options) {
            slot.choice->clear();
            slot.choice->addItems(field.options);
        }
        slot.choice->setCurrentIndex(field.chosen);
        slot.choice->setAccessibleName(field.label);
        return;
    }
    slot.field->setAccessibleName(field.label);
    slot.field->setKind(field.kind == EntryField::Kind::Angle ? LengthField::Kind::Angle : LengthField::Kind::Length);
    slot.field->setUnits(units);
    slot.field->setMayBeEmpty(true);
    if (sameKind) slot.field->show(field.value);
    else slot.field->showAnyway(field.value);
}

void EntryLine::showSentence() { m_sentence->setText(m_trouble.isEmpty() ? m_state.sentence : m_trouble); }

void EntryLine::beginWith(const QString& text) {
    for (const Slot& slot : m_slots) {
        if (slot.field->isHidden()) continue;
        slot.field->beginWith(text);
        return;
    }
}

/// A choice leaves Return and Esc to the line.
void EntryLine::keyPressEvent(QKeyEvent* event) {
    if (!qobject_cast<QComboBox*>(focusWidget())) QWidget::keyPressEvent(event);
    else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) Q_EMIT entered();
    else if (event->key() == Qt::Key_Escape) Q_EMIT left();
    else QWidget::keyPressEvent(event);
}

void EntryLine::focusFirstField() {
    for (const Slot& slot : m_slots) {
        if (!slot.choice->isHidden()) return slot.choice->setFocus(Qt::ShortcutFocusReason);
        if (slot.field->isHidden()) continue;
        slot.field->setFocus(Qt::ShortcutFocusReason);
        slot.field->selectAll();
        return;
    }
}

QWidget* EntryLine::widgetAt(int index) const {
    const Slot& slot = m_slots.at(static_cast<std::size_t>(index));
    if (slot.choice->isHidden()) return slot.field;
    return slot.choice;
}

/// While something is in hand Tab goes round among the fields, so that it stays in hand.
bool EntryLine::focusNextPrevChild(bool next) {
    const int count = static_cast<int>(m_state.fields.size());
    if (!m_state.staysAmongFields || count == 0) return QWidget::focusNextPrevChild(next);
    int here = 0;
    while (here < count && !widgetAt(here)->hasFocus()) ++here;
    if (here == count) return QWidget::focusNextPrevChild(next);
    widgetAt((here + (next ? 1 : count - 1)) % count)->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    return true;
}

}  // namespace kerfwall
