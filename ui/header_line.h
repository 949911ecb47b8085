// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QMenuBar;

namespace kerfwall {

class ElidedLabel;
class Session;

/// The sheet's first line: what lies on it, and the menus.
class HeaderLine : public QWidget {
    Q_OBJECT

public:
    explicit HeaderLine(Session& session, QWidget* parent = nullptr);

    QMenuBar* menus() const { return m_menus; }

private:
    void refresh();

    Session& m_session;
    ElidedLabel* m_title;
    ElidedLabel* m_details;
    QMenuBar* m_menus;
};

}  // namespace kerfwall
