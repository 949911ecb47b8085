// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace kerfwall {

/// A bar laid on the plan, to hold a ruler to. It keeps its length in pixels while it is shown.
class ScreenBar : public QWidget {
    Q_OBJECT

public:
    explicit ScreenBar(QWidget* plan);

    /// Puts it on the plan, as long as there is room for.
    void lay();
    /// From end to end, pixels.
    int barLength() const;

protected:
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace kerfwall
