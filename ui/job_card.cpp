// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/job_card.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "core/shop/same_finding.h"
#include "ui/card_texts.h"
#include "ui/opened_finding.h"
#include "ui/session.h"

namespace kerfwall {

JobCard::JobCard(Session& session, QWidget* parent) : QScrollArea(parent), m_session(session) {
    setObjectName(QStringLiteral("jobCard"));
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    auto* sheet = new QWidget(this);
    sheet->setObjectName(QStringLiteral("jobCardSheet"));
    m_column = new QVBoxLayout(sheet);
    m_column->setContentsMargins(14, 12, 14, 16);
    m_column->setSpacing(4);
    m_findings = makeSection(tr("Mind before cutting"), {});
    m_order = makeSection(tr("Order of work"), tr("Lay lines from edge to edge and mark the waste between them: the order of work follows."));
    m_sizes = makeSection(tr("Sizes"), {});
    m_column->addStretch(1);
    setWidget(sheet);
    m_opened = new OpenedFinding(m_session, sheet);
    connect(m_opened, &OpenedFinding::offered, this, [this] {
        orderKeys();
        showOpened();
    });
    connect(m_opened, &OpenedFinding::applied, this, [this] {
        closeOpened();
        Q_EMIT pointed({}, std::nullopt);  // what was to mind there is mended
    });
    connect(&m_session, &Session::opened, this, &JobCard::closeOpened);
    m_soon.setSingleShot(true);
    m_soon.setInterval(0);
    connect(&m_soon, &QTimer::timeout, this, &JobCard::refresh);
    connect(&m_session, &Session::changed, &m_soon, qOverload<>(&QTimer::start));
    refresh();
}

JobCard::Section JobCard::makeSection(const QString& title, const QString& whenEmpty) {
    Section section;
    auto* head = new QHBoxLayout;
    section.title = new QLabel(title, this);
    section.title->setObjectName(QStringLiteral("sectionTitle"));
    section.summary = new QLabel(this);
    section.summary->setObjectName(QStringLiteral("faint"));
    head->addWidget(section.title);
    head->addStretch(1);
    head->addWidget(section.summary);
    m_column->addLayout(head);
    section.rows = new QVBoxLayout;
    section.rows->setSpacing(2);
    section.rows->setContentsMargins(0, 0, 0, 14);
    section.empty = new QLabel(whenEmpty, this);
    section.empty->setObjectName(QStringLiteral("faint"));
    section.empty->setWordWrap(true);
    section.rows->addWidget(section.empty);
    m_column->addLayout(section.rows);
    return section;
}

void JobCard::fill(Section& section, const std::vector<CardRow::Text>& texts) {
    while (section.cards.size() < texts.size()) {
        auto* row = new CardRow(widget());
        const std::size_t index = section.cards.size();
        section.rows->addWidget(row);
        section.cards.push_back(row);
        Section* of = &section;
        connect(row, &CardRow::clicked, this, [this, of, index] { choose(*of, index); });
    }
    section.empty->setVisible(texts.empty() && !section.empty->text().isEmpty());
    for (std::size_t i = 0; i < section.cards.size(); ++i) {
        if (i < texts.size()) section.cards[i]->show(texts[i]);
        section.cards[i]->setVisible(i < texts.size());
    }
}

void JobCard::refresh() {
    fill(m_findings, findingTexts(m_session.findings()));
    m_findings.summary->setText(findingSummary(m_session.findings()));
    fill(m_order, stepTexts(m_session.project(), m_session.order()));
    m_order.summary->setText(orderSummary(m_session.order()));
    fill(m_sizes, sizeTexts(m_session.project(), m_session.solved(), m_session.order()));
    m_sizes.title->setVisible(!m_session.solved().cutouts.empty());
    if (m_step) chooseOnly(&m_order, *m_step);
    followOpened();
}

void JobCard::choose(Section& section, std::size_t row) {
    const bool again = section.cards.at(row)->isChosen();
    closeOpened();
    if (&section != &m_order || again) Q_EMIT stepLeft();
    if (again) return Q_EMIT pointed({}, std::nullopt);
    if (&section == &m_findings) return openFinding(row);
    chooseOnly(&section, row);
    if (&section == &m_order && row < m_session.order().steps.size()) {
        Q_EMIT pointed(m_session.order().steps[row].lines, std::nullopt);
        Q_EMIT stepAsked(row);
    }
    if (&section == &m_sizes) {
        const std::vector<LineId> lines = sizeLines(m_session.project(), m_session.solved(), row);
        Q_EMIT pointed(lines, std::nullopt);
    }
}

/// None: no row is chosen.
void JobCard::chooseOnly(const Section* section, std::size_t row) {
    for (const Section* each : {&m_findings, &m_order, &m_sizes}) {
        for (std::size_t i = 0; i < each->cards.size(); ++i) each->cards[i]->setChosen(each == section && i == row);
    }
}

void JobCard::point(const Finding& finding) {
    if (finding.hole) Q_EMIT holePointed(*finding.hole);
    else if (finding.fence) Q_EMIT fencePointed(*finding.fence);
    else if (!finding.cutout.empty() && finding.lines.empty()) Q_EMIT cutoutPointed(finding.cutout);
    Q_EMIT pointed(finding.lines, finding.at);
}

void JobCard::chooseStep(std::optional<std::size_t> step) {
    const bool isOther = step != m_step;
    m_step = step;
    if (!isOther) return;
    if (!step) return chooseOnly(nullptr, 0);
    refresh();
    const auto& steps = m_session.order().steps;
    if (*step >= steps.size()) return;
    closeOpened();
    chooseOnly(&m_order, *step);
    Q_EMIT pointed(steps[*step].lines, std::nullopt);
    QTimer::singleShot(0, this, [this] {  // once the column is laid out anew
        if (m_step && *m_step < m_order.cards.size()) ensureWidgetVisible(m_order.cards[*m_step], 0, 0);
    });
}

void JobCard::openFinding(std::size_t index) {
    refresh();
    if (index >= m_session.findings().size()) return;
    chooseOnly(&m_findings, index);
    layOpened(index);
    point(m_session.findings()[index]);
    m_opened->open(m_session.findings()[index]);
    showOpened();
}

/// The row and as much of what stands under it as there is room for; seen once the column is laid out anew.
void JobCard::showOpened() {
    QTimer::singleShot(0, this, [this] {
        const auto chosen = std::ranges::find_if(m_findings.cards, &CardRow::isChosen);
        if (!m_opened->finding() || chosen == m_findings.cards.end()) return;
        ensureWidgetVisible(m_opened, 0, 0);
        ensureWidgetVisible(*chosen, 0, 0);
    });
}

void JobCard::layOpened(std::size_t row) {
    m_findings.rows->removeWidget(m_opened);
    m_findings.rows->insertWidget(m_findings.rows->indexOf(m_findings.cards[row]) + 1, m_opened);
}

/// The opened finding's row may stand elsewhere after a change, or be gone.
void JobCard::followOpened() {
    if (!m_opened->finding()) return;
    const std::vector<Finding>& all = m_session.findings();
    const auto row = sameFinding(all, *m_opened->finding());
    if (!row) {
        closeOpened();
        return Q_EMIT pointed({}, std::nullopt);
    }
    chooseOnly(&m_findings, *row);
    layOpened(*row);
    m_opened->follow(all[*row]);
}

/// Tab goes from the row to its remedies and on to the next row.
void JobCard::orderKeys() {
    const auto chosen = std::ranges::find_if(m_findings.cards, &CardRow::isChosen);
    if (chosen == m_findings.cards.end()) return;
    QWidget* before = *chosen;
    for (QWidget* stop : m_opened->stops()) {
        setTabOrder(before, stop);
        before = stop;
    }
    if (chosen + 1 != m_findings.cards.end()) setTabOrder(before, *(chosen + 1));
}

void JobCard::closeOpened() {
    const auto chosen = std::ranges::find_if(m_findings.cards, &CardRow::isChosen);
    const bool hadFocus = m_opened->isAncestorOf(QApplication::focusWidget());
    m_opened->close();
    // The keyboard goes on from the row.
    if (hadFocus && chosen != m_findings.cards.end()) (*chosen)->setFocus(Qt::OtherFocusReason);
    chooseOnly(nullptr, 0);
}

std::optional<std::size_t> JobCard::stepFinding(int by) {
    refresh();
    const auto count = static_cast<int>(m_session.findings().size());
    if (count == 0) return std::nullopt;
    const auto& cards = m_findings.cards;
    const auto chosen = std::ranges::find_if(cards.begin(), cards.begin() + count, &CardRow::isChosen);
    const int here = static_cast<int>(chosen - cards.begin());
    const int next = here == count ? (by > 0 ? 0 : count - 1) : (here + by + count) % count;
    if (next != here) choose(m_findings, static_cast<std::size_t>(next));
    ensureWidgetVisible(cards[static_cast<std::size_t>(next)]);
    return static_cast<std::size_t>(next);
}

void JobCard::layForm(QWidget* form) {
    if (m_form) {
        m_column->removeWidget(m_form);
        m_form->hide();
    }
    m_form = form;
    if (!m_form) return;
    m_column->insertWidget(0, m_form);
    m_form->show();
    ensureVisible(0, 0);
}

void JobCard::dress() {
    for (Section* section : {&m_findings, &m_order, &m_sizes}) {
        for (CardRow* row : section->cards) row->dress();
    }
}

}  // namespace kerfwall
