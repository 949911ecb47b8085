// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "ui/paper_setting.h"

namespace kerfwall {

/// What is set in a step, in figures about 10 mm high on the screen: to be read across a bench. They stand side by
/// side in two rows; a little smaller where they do not fit into two.
class StepFigures : public QWidget {
    Q_OBJECT

public:
    explicit StepFigures(QWidget* parent = nullptr);

    void show(const std::vector<SettingFigure>& figures);

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {100, heightForWidth(width())}; }
    /// Pixels from a figure's foot to its top.
    int figureHeight() const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Placed {
        SettingFigure figure;
        QRectF room;
        double size = 0;  // pixels of the figure's letters
    };
    std::vector<Placed> placed(int width) const;
    std::vector<Placed> placed(int width, double usual) const;
    double widthOf(const SettingFigure& figure, double size) const;

    std::vector<SettingFigure> m_figures;
};

}  // namespace kerfwall
