// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/card_row.h"

#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include "ui/card_text.h"
#include "ui/screen_painting.h"

namespace kerfwall {
namespace {

constexpr int kSignRoom = 38;  // pixels left of the words

}  // namespace

CardRow::CardRow(QWidget* parent) : QFrame(parent), m_heading(new CardText(this)), m_sentence(new CardText(this)) {
    setFocusPolicy(Qt::TabFocus);
    setCursor(Qt::PointingHandCursor);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kSignRoom, 6, 10, 6);
    column->setSpacing(2);
    column->addWidget(m_heading);
    column->addWidget(m_sentence);
}

void CardRow::show(const Text& text) {
    const bool sameKind = text.kind == m_text.kind && !m_heading->text().isEmpty();
    if (text == m_text && sameKind) return;
    m_text = text;
    m_heading->setText(text.heading);
    m_heading->setVisible(!text.heading.isEmpty());
    showWords();
    const bool isSize = text.kind == Kind::Size;
    setAccessibleName(isSize ? text.heading + QStringLiteral(": ") + text.mark
                             : text.mark + QStringLiteral(". ") + text.heading);
    setAccessibleDescription(text.whole.isEmpty() ? text.text : text.whole);
    dress();
    update();
}

void CardRow::dress() {
    const bool grave = m_text.kind == Kind::Stop || m_text.kind == Kind::Care;
    m_heading->setBold(grave);
    const bool isSize = m_text.kind == Kind::Size;
    m_heading->setInk(m_text.kind == Kind::Stop   ? colours().stop
                      : m_text.kind == Kind::Care ? colours().care
                      : isSize                    ? colours().faint
                                                  : colours().ink);
    m_sentence->setInk(grave ? colours().ink : colours().faint);
    update();
}

void CardRow::showWords() {
    const QString& words = m_chosen && !m_text.whole.isEmpty() ? m_text.whole : m_text.text;
    m_sentence->setText(words);
    m_sentence->setVisible(!words.isEmpty());
}

void CardRow::setChosen(bool chosen) {
    if (chosen == m_chosen) return;
    m_chosen = chosen;
    showWords();
    update();
}

void CardRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = QRectF(rect()).adjusted(0.5, 1.5, -0.5, -1.5);
    if (m_text.kind == Kind::Stop || m_text.kind == Kind::Care) {
        const bool stop = m_text.kind == Kind::Stop;
        painter.setPen(QPen(stop ? colours().stop : colours().care, 1));
        painter.setBrush(stop ? colours().stopTint : colours().careTint);
        painter.drawRect(frame);
    }
    if (m_chosen) {
        painter.setPen(QPen(colours().accent, 1));
        painter.setBrush(colours().accentTint);
        painter.drawRect(frame);
    }
    if (hasFocus()) {
        painter.setPen(QPen(colours().accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(frame.adjusted(1, 1, -1, -1));
    }
    paintSign(painter, QRectF(0, 5, kSignRoom, 22));
}

/// The same sign as in the plan, with its number; steps carry their number alone.
void CardRow::paintSign(QPainter& painter, const QRectF& room) const {
    constexpr double kSign = 17;  // pixels high
    switch (m_text.kind) {
        case Kind::Stop:
            return kerfwall::paintSign(painter, room.center(), kSign, Severity::Stop, m_text.mark, drawingColours());
        case Kind::Care:
            return kerfwall::paintSign(painter, room.center(), kSign, Severity::Care, m_text.mark, drawingColours());
        case Kind::Note:
            return kerfwall::paintSign(painter, room.center(), kSign, Severity::Note, m_text.mark, drawingColours());
        case Kind::Size:
            painter.setPen(colours().ink);
            return painter.drawText(QRect(kSignRoom, m_heading->y(), width() - kSignRoom - 10, m_heading->height()),
                                    Qt::AlignRight | Qt::AlignVCenter, m_text.mark);
        case Kind::Step: break;
    }
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    painter.setPen(colours().ink);
    painter.drawText(room, Qt::AlignCenter, m_text.mark);
}

void CardRow::mousePressEvent(QMouseEvent*) { Q_EMIT clicked(); }

void CardRow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space) {
        Q_EMIT clicked();
        return;
    }
    QFrame::keyPressEvent(event);
}

}  // namespace kerfwall
