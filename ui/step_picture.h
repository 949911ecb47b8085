// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/drawing/drawing.h"
#include "core/drawing/step_drawing.h"
#include "ui/session.h"

namespace kerfwall {

/// The picture of one step, as large as it fits.
class StepPicture : public QWidget {
    Q_OBJECT

public:
    explicit StepPicture(const Session& session, QWidget* parent = nullptr);

    /// Requires  the session's order of work has that step.
    void show(std::size_t step);

    QSize sizeHint() const override { return {560, 380}; }
    QSize minimumSizeHint() const override { return {160, 120}; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void renew();

    const Session& m_session;
    std::size_t m_step = 0;
    StepRoom m_room;
    Drawing m_drawing;
    double m_scale = 1;  // mm of the panel for one on the screen
};

}  // namespace kerfwall
