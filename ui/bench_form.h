// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <expected>
#include <optional>

#include "core/says/project.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace kerfwall {

class FoldedList;
class Session;

/// The whole bench, laid on the job card: saws, trimming bit, drills, clamps and what else is at hand. Each entry is a step
/// of its own. A bench can be kept as the maker's own and is then what new templates begin with.
class BenchForm : public QFrame {
    Q_OBJECT

public:
    explicit BenchForm(Session& session, QWidget* parent = nullptr);

    void focusFirst();

Q_SIGNALS:
    void closeAsked();

private:
    void addHeader();
    void addSaws();
    void addClamps();
    void addGroup(const QString& title);
    QPushButton* button(const QString& text, const char* name);
    void takeBench(const QString& step, const std::optional<Bench>& bench);
    void refresh();

    Session& m_session;
    QVBoxLayout* m_column;
    QLabel* m_whose = nullptr;
    QLabel* m_trouble = nullptr;
    QPushButton* m_keep = nullptr;
    QPushButton* m_takeMine = nullptr;
    QPushButton* m_takeStock = nullptr;
    FoldedList* m_saws = nullptr;
    FoldedList* m_clamps = nullptr;
};

}  // namespace kerfwall
