// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <functional>
#include <optional>
#include <vector>

#include "core/says/project.h"

class QPushButton;
class QVBoxLayout;

namespace kerfwall {

class Session;
class SheetForm;

/// Things of one sort on the bench, one line each; one at a time unfolds into its fields.
class FoldedList : public QFrame {
    Q_OBJECT

public:
    struct Sort {
        QString name;      ///< of the widgets: "saw" makes "saw0", "saw1" ... and "sawTakeAway"
        QString takeAway;  ///< "Take this saw away"
        /// The line of each; what makes its fields other ones (a saw's kind) stands before a tab and is not shown.
        std::function<QStringList(const Project&)> lines;
        std::function<SheetForm*(std::size_t, QWidget*)> makeForm;
        std::function<void(std::size_t)> remove;
    };

    FoldedList(Session& session, Sort sort, QWidget* parent);

    /// Unfolds that one and goes to its first field.
    void unfold(std::size_t index);

Q_SIGNALS:
    void closeAsked();

private:
    void refresh();
    void build(const QStringList& lines);
    void toggle(std::size_t index);
    void fold();
    void remove(std::size_t index);

    Session& m_session;
    Sort m_sort;
    QVBoxLayout* m_column;
    QStringList m_kinds;
    std::vector<QPushButton*> m_heads;
    std::optional<std::size_t> m_open;
    QFrame* m_unfolded = nullptr;
};

}  // namespace kerfwall
