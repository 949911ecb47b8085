// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFocusEvent>
#include <QPlainTextEdit>

namespace kerfwall {

/// A text of several lines; Tab goes on to the next field, and leaving it is when it holds.
class LeavingText : public QPlainTextEdit {
    Q_OBJECT

public:
    explicit LeavingText(QWidget* parent = nullptr) : QPlainTextEdit(parent) { setTabChangesFocus(true); }

Q_SIGNALS:
    void left();

protected:
    void focusOutEvent(QFocusEvent* event) override {
        QPlainTextEdit::focusOutEvent(event);
        if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason) Q_EMIT left();
    }
};

}  // namespace kerfwall
