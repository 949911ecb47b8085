// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QWheelEvent>

namespace kerfwall {

/// A choice on the job card. The wheel moves the card under it and never what is chosen.
class QuietBox : public QComboBox {
    Q_OBJECT

public:
    using QComboBox::QComboBox;

protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

}  // namespace kerfwall
