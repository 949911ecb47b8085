// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <QTimer>
#include <vector>

#include "core/shop/finding.h"
#include "ui/card_row.h"

class QLabel;
class QVBoxLayout;

namespace kerfwall {

class OpenedFinding;
class Session;

/// The column that reads from top to bottom like a job card: what to mind, the order of work, the sizes. What the
/// menus open to be filled in stands on top of it.
class JobCard : public QScrollArea {
    Q_OBJECT

public:
    explicit JobCard(Session& session, QWidget* parent = nullptr);

    /// Lays a form on top of the card in place of the one there; none: takes it away. Not owned.
    void layForm(QWidget* form);
    QWidget* form() const { return m_form; }
    /// Opens the row of that finding: its whole sentence, a picture of its place, its remedies.
    void openFinding(std::size_t index);
    /// Marks the row of that step as open, and brings it into view; none: no step is open.
    void chooseStep(std::optional<std::size_t> step);
    /// Chooses the finding so many rows on from the one that is chosen, round and round, and points it out. None: there is
    /// no finding.
    std::optional<std::size_t> stepFinding(int by);
    /// Takes on the colours worn now.
    void dress();

Q_SIGNALS:
    /// A row was chosen: the lines it is about and its place.
    void pointed(const std::vector<kerfwall::LineId>& lines, std::optional<kerfwall::Point> at);
    void cutoutPointed(const std::string& cutout);
    void holePointed(std::size_t hole);
    void fencePointed(std::size_t fence);
    void stepAsked(std::size_t step);  ///< a row of the order of work was opened
    void stepLeft();                   ///< ... or put away, or another row was chosen

private:
    struct Section {
        QLabel* title = nullptr;
        QLabel* summary = nullptr;
        QLabel* empty = nullptr;  // what to do while there are no rows
        QVBoxLayout* rows = nullptr;
        std::vector<CardRow*> cards;
    };
    Section makeSection(const QString& title, const QString& whenEmpty);
    void fill(Section& section, const std::vector<CardRow::Text>& texts);
    void refresh();
    void choose(Section& section, std::size_t row);
    void chooseOnly(const Section* section, std::size_t row);
    void point(const Finding& finding);
    void followOpened();
    void layOpened(std::size_t row);
    void orderKeys();
    void showOpened();
    void closeOpened();

    Session& m_session;
    QVBoxLayout* m_column;
    QWidget* m_form = nullptr;
    OpenedFinding* m_opened;
    std::optional<std::size_t> m_step;  // that is open
    QTimer m_soon;  // several changes within one frame are shown once
    Section m_findings;
    Section m_order;
    Section m_sizes;
};

}  // namespace kerfwall
