// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

#include "core/says/project.h"

class QLabel;

namespace kerfwall {

class LengthField;
class ScreenBar;
class Session;

/// Makes life size true: lays a bar on the plan while it is shown, and asks what a ruler held to it says.
class ScreenForm : public QFrame {
    Q_OBJECT

public:
    /// `plan`: the widget the bar is laid on.
    ScreenForm(Session& session, QWidget* plan, QWidget* parent = nullptr);

    void focusFirst();

Q_SIGNALS:
    void closeAsked();
    void measured();  ///< the screen's scale is known now

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void refresh();
    void take(std::optional<double> mm);

    Session& m_session;
    ScreenBar* m_bar;
    LengthField* m_field;
    QLabel* m_answer;
};

}  // namespace kerfwall
