// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/opened_finding.h"

#include <QLabel>
#include <QVBoxLayout>

#include "ui/place_picture.h"
#include "ui/remedy_button.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

constexpr int kSettleTime = 250;  // ms without a change until remedies are looked for anew
constexpr int kUnderWords = 38;   // pixels: where the row's words begin

}  // namespace

OpenedFinding::OpenedFinding(Session& session, QWidget* parent)
    : QFrame(parent),
      m_session(session),
      m_picture(new PlacePicture(this)),
      m_state(new QLabel(this)),
      m_offers(new QVBoxLayout) {
    setObjectName(QStringLiteral("openedFinding"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kUnderWords, 2, 10, 10);
    column->setSpacing(6);
    m_state->setObjectName(QStringLiteral("faint"));
    m_state->setWordWrap(true);
    m_offers->setSpacing(4);
    column->addWidget(m_picture);
    column->addWidget(m_state);
    column->addLayout(m_offers);
    m_settled.setSingleShot(true);
    m_settled.setInterval(kSettleTime);
    connect(&m_settled, &QTimer::timeout, this, &OpenedFinding::look);
    connect(&m_search, &RemedySearch::found, this, &OpenedFinding::offer);
    hide();
}

void OpenedFinding::open(const Finding& finding) {
    m_settled.stop();
    m_finding = finding;
    m_project = m_session.project();
    showPicture(nullptr);
    show();
    look();
}

void OpenedFinding::follow(const Finding& finding) {
    if (finding == m_finding && m_project == m_session.project()) return;
    m_finding = finding;
    m_project = m_session.project();
    showPicture(nullptr);
    clearOffers();
    m_search.forget();
    m_state->setText(tr("What can be done is looked for once the drawing rests."));
    m_settled.start();
}

void OpenedFinding::close() {
    m_settled.stop();
    m_search.forget();
    m_finding.reset();
    clearOffers();
    hide();
}

void OpenedFinding::look() {
    if (!m_finding) return;
    if (m_session.isInHand()) return m_settled.start();
    clearOffers();
    m_state->setText(tr("Looking for what can be done …"));
    m_search.ask(m_session.project(), m_session.solved(), *m_finding);
}

void OpenedFinding::offer(const std::vector<Remedy>& remedies) {
    clearOffers();
    m_remedies = remedies;
    m_state->setText(remedies.empty() ? tr("No single change on this drawing or bench was found that mends it.")
                                      : tr("What would mend it:"));
    for (std::size_t i = 0; i < m_remedies.size(); ++i) {
        const QString words = QString::fromStdString(m_remedies[i].words);
        auto* button = new RemedyButton(m_remedies[i].clears ? words : tr("%1 (makes it less grave)").arg(words), this);
        button->setAccessibleDescription(tr("Applies this remedy; undo takes it back."));
        m_offers->addWidget(button);
        button->show();
        m_buttons.push_back(button);
        connect(button, &RemedyButton::lookedAt, this, [this, i](bool isLookedAt) {
            showPicture(isLookedAt && i < m_remedies.size() ? &m_remedies[i] : nullptr);
        });
        connect(button, &RemedyButton::clicked, this, [this, i] { apply(i); });
    }
    Q_EMIT offered();
}

void OpenedFinding::clearOffers() {
    for (RemedyButton* button : m_buttons) {
        disconnect(button, nullptr, this, nullptr);
        button->hide();
        button->deleteLater();
    }
    m_buttons.clear();
    m_remedies.clear();
}

void OpenedFinding::showPicture(const Remedy* remedy) {
    if (!m_finding) return;
    if (remedy) m_picture->show(remedy->project, remedy->solved, *m_finding);
    else m_picture->show(m_session.project(), m_session.solved(), *m_finding);
}

void OpenedFinding::apply(std::size_t index) {
    if (index >= m_remedies.size()) return;
    const Remedy remedy = m_remedies[index];
    Q_EMIT applied();
    m_session.changeWhole(QString::fromStdString(remedy.words), remedy.project);
}

std::vector<QWidget*> OpenedFinding::stops() const { return {m_buttons.begin(), m_buttons.end()}; }

}  // namespace kerfwall
