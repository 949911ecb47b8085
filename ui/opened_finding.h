// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QTimer>
#include <optional>
#include <vector>

#include "ui/remedy_search.h"

class QLabel;
class QVBoxLayout;

namespace kerfwall {

class PlacePicture;
class RemedyButton;
class Session;

/// What stands under a finding's row once it is opened: a picture of the place and the remedies to be pressed. They are
/// looked for when the row opens, and again once the drawing has come to rest after a change.
class OpenedFinding : public QFrame {
    Q_OBJECT

public:
    explicit OpenedFinding(Session& session, QWidget* parent = nullptr);

    /// Shows that finding of the session's project.
    void open(const Finding& finding);
    /// The same finding, after a change or as it was.
    void follow(const Finding& finding);
    void close();
    const std::optional<Finding>& finding() const { return m_finding; }
    /// What the keyboard goes through, in order.
    std::vector<QWidget*> stops() const;

Q_SIGNALS:
    void offered();  ///< the remedies are there
    void applied();

private:
    void showPicture(const Remedy* remedy);
    void look();
    void offer(const std::vector<Remedy>& remedies);
    void clearOffers();
    void apply(std::size_t index);

    Session& m_session;
    RemedySearch m_search;
    QTimer m_settled;
    std::optional<Finding> m_finding;
    Project m_project;  // that it is a finding of
    std::vector<Remedy> m_remedies;
    std::vector<RemedyButton*> m_buttons;
    PlacePicture* m_picture;
    QLabel* m_state;  // what stands in place of the remedies, or over them
    QVBoxLayout* m_offers;
};

}  // namespace kerfwall
