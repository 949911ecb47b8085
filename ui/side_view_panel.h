// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/view_scale.h"

namespace kerfwall {

class Session;

/// The panel seen from its bottom edge, cut at the cutting line: under the plan, on its scale, joined to it.
class SideViewPanel : public QWidget {
    Q_OBJECT

public:
    explicit SideViewPanel(Session& session, QWidget* parent = nullptr);

    /// Follows the plan's scale and place across.
    void follow(const ViewScale& plan);
    /// How many times larger heights are drawn than lengths.
    double exaggeration() const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void paintHeading(QPainter& painter) const;
    void paintProjection(QPainter& painter, double top) const;

    Session& m_session;
    ViewScale m_plan;
};

}  // namespace kerfwall
