// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QWidget>
#include <vector>

namespace kerfwall {

class Tool;

/// The hand tools on the sheet's left edge, each with its number key.
class ToolStrip : public QWidget {
    Q_OBJECT

public:
    explicit ToolStrip(const std::vector<Tool*>& tools, QWidget* parent = nullptr);

    void choose(int index);

Q_SIGNALS:
    void chosen(int index);

private:
    std::vector<QAbstractButton*> m_buttons;
};

}  // namespace kerfwall
