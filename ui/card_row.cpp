// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/card_row.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include "ui/look.h"

namespace kerfwall {
namespace {

constexpr int kSignRoom = 38;  // pixels left of the words

}  // namespace

CardRow::CardRow(QWidget* parent) : QFrame(parent), m_heading(new QLabel(this)), m_sentence(new QLabel(this)) {
    setFocusPolicy(Qt::TabFocus);
    setCursor(Qt::PointingHandCursor);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kSignRoom, 6, 10, 6);
    column->setSpacing(2);
    column->addWidget(m_heading);
    column->addWidget(m_sentence);
    m_heading->setWordWrap(true);
    m_sentence->setWordWrap(true);
    m_heading->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_sentence->setAttribute(Qt::WA_TransparentForMouseEvents);
}

void CardRow::show(const Text& text) {
    const bool sameKind = text.kind == m_text.kind && !m_heading->text().isEmpty();
    if (text == m_text && sameKind) return;
    m_text = text;
    m_heading->setText(text.heading);
    m_heading->setVisible(!text.heading.isEmpty());
    m_sentence->setText(text.text);
    m_sentence->setVisible(!text.text.isEmpty());
    setAccessibleName((text.mark.isEmpty() ? QString() : text.mark + QStringLiteral(". ")) + text.heading);
    setAccessibleDescription(text.text);
    dress();
    update();
}

void CardRow::dress() {
    const bool grave = m_text.kind == Kind::Stop || m_text.kind == Kind::Care;
    QFont font = this->font();
    font.setBold(grave);
    m_heading->setFont(font);
    const auto colour = [](QLabel* label, const QColor& ink) {
        QPalette palette = label->palette();
        palette.setColor(QPalette::WindowText, ink);
        label->setPalette(palette);
    };
    colour(m_heading, m_text.kind == Kind::Stop ? colours().stop : m_text.kind == Kind::Care ? colours().care : colours().ink);
    colour(m_sentence, grave ? colours().ink : colours().faint);
    update();
}

void CardRow::setChosen(bool chosen) {
    if (chosen == m_chosen) return;
    m_chosen = chosen;
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

/// Stop an octagon, care a triangle, note a ring: told apart by shape, not by colour.
void CardRow::paintSign(QPainter& painter, const QRectF& room) const {
    const QPointF c = room.center();
    painter.setBrush(Qt::NoBrush);
    switch (m_text.kind) {
        case Kind::Stop: {
            painter.setPen(QPen(colours().stop, 1.8));
            painter.drawPolygon(QPolygonF({c + QPointF(-3.5, -8), c + QPointF(3.5, -8), c + QPointF(8, -3.5), c + QPointF(8, 3.5),
                                           c + QPointF(3.5, 8), c + QPointF(-3.5, 8), c + QPointF(-8, 3.5), c + QPointF(-8, -3.5)}));
            painter.drawLine(c + QPointF(-4, 0), c + QPointF(4, 0));
            break;
        }
        case Kind::Care:
            painter.setPen(QPen(colours().care, 1.8));
            painter.drawPolygon(QPolygonF({c + QPointF(0, -8), c + QPointF(9, 7), c + QPointF(-9, 7)}));
            painter.drawLine(c + QPointF(0, -3), c + QPointF(0, 2));
            painter.drawPoint(c + QPointF(0, 4.5));
            break;
        case Kind::Note:
            painter.setPen(QPen(colours().faint, 1.6));
            painter.drawEllipse(c, 5, 5);
            break;
        case Kind::Step: {
            QFont bold = font();
            bold.setBold(true);
            painter.setFont(bold);
            painter.setPen(colours().ink);
            painter.drawText(room, Qt::AlignCenter, m_text.mark);
            break;
        }
        case Kind::Size: break;
    }
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
