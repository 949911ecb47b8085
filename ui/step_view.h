// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "core/shop/order_of_work.h"

class QLabel;
class QPushButton;

namespace kerfwall {

class Session;
class StepFigures;
class StepPicture;

/// One step of the order of work in place of the plan: what it is, how the panel lies, its settings in large figures and
/// its picture. Arrow and Page keys go from step to step, Home and End to the first and the last, Esc leaves. An open step
/// belongs to what it cuts: it stays open through an edit that gives it another number, and closes when it is gone.
class StepView : public QWidget {
    Q_OBJECT

public:
    explicit StepView(Session& session, QWidget* parent = nullptr);

    /// The step shown; none: the view is closed.
    std::optional<std::size_t> step() const { return m_step; }
    /// Requires  the session's order of work has that step.
    void open(std::size_t step);
    void close();
    /// So many steps on, as far as there are any; closed, it opens where it was last, or on the first.
    /// Gives     false where there is no order of work.
    bool go(int by);

Q_SIGNALS:
    void opened(std::size_t step);
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void follow();
    void refresh();
    QPushButton* button(const QString& text, const char* name);

    Session& m_session;
    std::optional<std::size_t> m_step;
    std::size_t m_last = 0;          // shown when it was closed
    std::vector<WorkStep> m_steps;   // the order of work that m_step counts in
    QLabel* m_title;
    QLabel* m_lie;
    QLabel* m_because;  // why it waits for another step
    StepFigures* m_figures;
    StepPicture* m_picture;
    QPushButton* m_previous;
    QPushButton* m_next;
    QPushButton* m_close;
};

}  // namespace kerfwall
