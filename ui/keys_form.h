// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QGridLayout;
class QMenu;
class QMenuBar;
class QVBoxLayout;

namespace kerfwall {

/// Every key there is, laid on the job card: those of the menus as the menus have them, and those of the plan.
class KeysForm : public QFrame {
    Q_OBJECT

public:
    KeysForm(const QMenuBar& menus, QWidget* parent);

    void focusFirst();

Q_SIGNALS:
    void closeAsked();

protected:
    void showEvent(QShowEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void fill();
    QGridLayout* addSection(const QString& heading);
    void addKey(QGridLayout* rows, const QString& key, const QString& words);
    void addMenu(QGridLayout* rows, const QMenu& menu);

    const QMenuBar& m_menus;
    QVBoxLayout* m_column;
    QWidget* m_list = nullptr;
};

}  // namespace kerfwall
