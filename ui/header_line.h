// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QMenuBar;

namespace kerfwall {

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
    QLabel* m_title;
    QLabel* m_details;
    QMenuBar* m_menus;
};

}  // namespace kerfwall
