// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/length_field.h"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QStyle>
#include <limits>

#include "core/says/length_text.h"
#include "ui/wording.h"

namespace kerfwall {

LengthField::LengthField(QWidget* parent)
    : QLineEdit(parent), m_low(-std::numeric_limits<double>::max()), m_high(std::numeric_limits<double>::max()) {
    connect(this, &QLineEdit::textEdited, this, &LengthField::read);
    connect(this, &QLineEdit::returnPressed, this, [this] {
        settle();
        selectAll();
    });
}

void LengthField::setKind(Kind kind) { m_kind = kind; }

void LengthField::setUnits(Units units) {
    if (units == m_units) return;
    m_units = units;
    if (!m_typing) setText(textOf(m_value));
}

void LengthField::setRange(double low, double high, const QString& sentence) {
    m_low = low;
    m_high = high;
    m_rangeSentence = sentence;
}

QString LengthField::textOf(std::optional<double> value) const {
    if (!value) return {};
    return m_kind == Kind::Angle ? angleFor(*value) : lengthUnitFor(*value, m_units);
}

void LengthField::show(std::optional<double> value) {
    if (!m_typing) showAnyway(value);
}

void LengthField::showAnyway(std::optional<double> value) {
    m_typing = false;
    m_value = value;
    setTrouble({});
    const QString text = textOf(value);
    if (text != this->text()) setText(text);
}

void LengthField::beginWith(const QString& typedText) {
    setFocus(Qt::OtherFocusReason);
    setText(typedText);
    read(typedText);
}

void LengthField::read(const QString& typedText) {
    m_typing = true;
    m_read.reset();
    const std::string raw = typedText.trimmed().toStdString();
    if (raw.empty() && m_mayBeEmpty) {
        setTrouble({});
        Q_EMIT typed(std::nullopt);
        return;
    }
    const auto number = m_kind == Kind::Angle ? readAngle(raw) : readLength(raw, m_units);
    if (!number) return setTrouble(QString::fromStdString(number.error()));
    if (*number < m_low || *number > m_high) return setTrouble(m_rangeSentence);
    m_read = *number;
    setTrouble({});
    Q_EMIT typed(m_read);
}

void LengthField::settle() {
    if (!m_typing) {
        Q_EMIT entered(m_value);
        return;
    }
    if (!m_trouble.isEmpty()) return;
    m_typing = false;
    m_value = m_read;
    setText(textOf(m_value));
    Q_EMIT entered(m_value);
}

void LengthField::setTrouble(const QString& sentence) {
    if (sentence == m_trouble) return;
    m_trouble = sentence;
    setToolTip(sentence);
    setAccessibleDescription(sentence);
    setProperty("trouble", !sentence.isEmpty());
    style()->unpolish(this);
    style()->polish(this);
    Q_EMIT troubled(sentence);
}

void LengthField::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        showAnyway(m_value);
        Q_EMIT left();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void LengthField::focusInEvent(QFocusEvent* event) {
    QLineEdit::focusInEvent(event);
    if (event->reason() != Qt::MouseFocusReason && event->reason() != Qt::OtherFocusReason) selectAll();
}

void LengthField::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    if (event->reason() == Qt::PopupFocusReason || event->reason() == Qt::ActiveWindowFocusReason) return;
    // Leaving with nonsense in the field puts back what was there: nothing is set by accident.
    if (!m_trouble.isEmpty()) showAnyway(m_value);
    else if (m_typing) settle();
}

}  // namespace kerfwall
