// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "core/drawing/close_up.h"

namespace kerfwall {

/// A small picture of the plan round the place of a finding, with a text alternative.
class PlacePicture : public QWidget {
    Q_OBJECT

public:
    explicit PlacePicture(QWidget* parent = nullptr);

    /// Hidden where the finding has no place on the plan.
    void show(const Project& project, const Solved& solved, const Finding& finding);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<CloseUp> m_shown;
};

}  // namespace kerfwall
