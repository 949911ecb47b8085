// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tool_strip.h"

#include <QPainter>
#include <QShortcut>
#include <QVBoxLayout>

#include "ui/look.h"
#include "ui/tool.h"

namespace kerfwall {
namespace {

/// A tool's name and its number key.
class ToolButton : public QAbstractButton {
public:
    ToolButton(const QString& name, int number, QWidget* parent) : QAbstractButton(parent), m_number(number) {
        setText(name);
        setCheckable(true);
        setAutoExclusive(true);
        setFocusPolicy(Qt::TabFocus);
        setAccessibleName(tr("%1, key %2").arg(name).arg(number));
    }
    QSize sizeHint() const override { return {134, 36}; }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const QRectF frame = QRectF(rect()).adjusted(5, 1, -5, -1);
        if (isChecked() || underMouse()) {
            painter.setPen(isChecked() ? QPen(colours().accent, 1) : QPen(Qt::NoPen));
            painter.setBrush(colours().accentTint);
            painter.drawRoundedRect(frame, 3, 3);
        }
        if (hasFocus()) {
            painter.setPen(QPen(colours().accent, 2));
            painter.setBrush(Qt::NoBrush);
            painter.drawRoundedRect(frame.adjusted(1, 1, -1, -1), 3, 3);
        }
        QFont words = font();
        words.setBold(isChecked());
        painter.setFont(words);
        painter.setPen(colours().ink);
        painter.drawText(rect().adjusted(15, 0, -24, 0), Qt::AlignLeft | Qt::AlignVCenter, text());
        painter.setFont(font());
        painter.setPen(colours().faint);
        painter.drawText(rect().adjusted(0, 0, -13, 0), Qt::AlignRight | Qt::AlignVCenter, QString::number(m_number));
    }

private:
    int m_number;
};

}  // namespace

ToolStrip::ToolStrip(const std::vector<Tool*>& tools, QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("toolStrip"));
    setAttribute(Qt::WA_StyledBackground);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 1, 12);
    column->setSpacing(6);
    for (std::size_t i = 0; i < tools.size(); ++i) {
        auto* button = new ToolButton(tools[i]->name(), static_cast<int>(i) + 1, this);
        column->addWidget(button);
        m_buttons.push_back(button);
        connect(button, &QAbstractButton::clicked, this, [this, i] { Q_EMIT chosen(static_cast<int>(i)); });
        // A button's own shortcut waits for its animation; the next key may be for the tool already.
        auto* key = new QShortcut(QKeySequence(QString::number(i + 1)), this);
        connect(key, &QShortcut::activated, this, [this, i] { Q_EMIT chosen(static_cast<int>(i)); });
    }
    column->addStretch(1);
}

void ToolStrip::choose(int index) { m_buttons.at(static_cast<std::size_t>(index))->setChecked(true); }

}  // namespace kerfwall
