// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/first_sheet.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/rack.h"
#include "ui/wish_words.h"

namespace kerfwall {
namespace {

constexpr int kMostOnShelf = 12;
constexpr int kMostLast = 4;
constexpr int kOfferWidth = 196;  // pixels of text

}  // namespace

FirstSheet::FirstSheet(QWidget* parent) : QFrame(parent) {
    setObjectName(QStringLiteral("firstSheet"));
    setAccessibleName(tr("Begin a template"));
    setAttribute(Qt::WA_NoMousePropagation);  // a click beside the offers is not one on the plan, which it covers
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    auto* scroll = new QScrollArea(this);
    scroll->setObjectName(QStringLiteral("firstScroll"));
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* page = new QWidget(scroll);
    page->setObjectName(QStringLiteral("firstPage"));
    auto* columns = new QHBoxLayout(page);
    columns->setContentsMargins(12, 14, 12, 14);
    columns->setSpacing(12);
    columns->addStretch(1);
    auto* left = new QVBoxLayout;
    auto* right = new QVBoxLayout;
    for (QVBoxLayout* column : {left, right}) {
        column->setSpacing(6);
        columns->addLayout(column);
    }
    columns->addStretch(1);
    m_sizes = addSection(left, tr("Size wanted in the work"), QStringLiteral("firstSizes"));
    m_panels = addSection(left, tr("A panel to draw on"), QStringLiteral("firstPanels"));
    m_last = addSection(right, tr("Open lately"), QStringLiteral("firstLast"));
    m_shelf = addSection(right, tr("From the shelf"), QStringLiteral("firstShelf"));
    m_samples = addSection(right, tr("A sample"), QStringLiteral("firstSamples"));
    left->addStretch(1);
    right->addStretch(1);
    scroll->setWidget(page);
    whole->addWidget(scroll);
}

FirstSheet::Section FirstSheet::addSection(QVBoxLayout* column, const QString& title, const QString& name) {
    auto* box = new QWidget(this);
    box->setObjectName(name);
    auto* rows = new QVBoxLayout(box);
    rows->setContentsMargins(0, 0, 0, 10);
    rows->setSpacing(4);
    auto* heading = new QLabel(title, box);
    heading->setObjectName(QStringLiteral("sectionTitle"));
    rows->addWidget(heading);
    column->addWidget(box);
    return {rows, title};
}

QPushButton* FirstSheet::offer(Section& section, const QString& text, const QString& detail, const QString& name) {
    auto* button = new QPushButton(section.offers->parentWidget());
    const QFontMetrics metrics = button->fontMetrics();
    const QString first = metrics.elidedText(text, Qt::ElideRight, kOfferWidth);
    button->setText(detail.isEmpty() ? first : first + QLatin1Char('\n') + detail);
    if (first != text) button->setToolTip(text);
    button->setObjectName(name);
    button->setAccessibleName(detail.isEmpty() ? tr("%1: %2").arg(section.title, text) : tr("%1: %2, %3").arg(section.title, text, detail));
    button->setFixedWidth(kOfferWidth + 24);
    section.offers->addWidget(button);
    m_offers.push_back(button);
    button->show();
    return button;
}

void FirstSheet::refresh(const Project& project, const QStringList& lastFiles) {
    m_units = project.units;
    clear();
    offerSizes();
    offerPanels(project);
    offerTemplates(m_last, templatesAt(lastFiles.mid(0, kMostLast), project.units), QStringLiteral("lastFile"));
    m_last.offers->parentWidget()->setVisible(m_last.offers->count() > 1);
    offerShelf(project.units);
    for (const ShelfTemplate& sample : templatesIn(sampleFolder(), project.units, kMostOnShelf)) {
        const QPushButton* button = offer(m_samples, sample.title, sample.size, QStringLiteral("sample"));
        connect(button, &QPushButton::clicked, this, [this, path = sample.path] { Q_EMIT sampleAsked(path); });
    }
}

void FirstSheet::offerSizes() {
    const QStringList shapes{tr("A window"), tr("A leg frame"), tr("Any shape by its corners")};
    for (int shape = 0; shape < shapes.size(); ++shape) {
        const QPushButton* button = offer(m_sizes, shapes[shape], {}, shape == 0 ? QStringLiteral("beginWanted") : QStringLiteral("beginShape%1").arg(shape));
        connect(button, &QPushButton::clicked, this, [this, shape] { Q_EMIT sizeAsked(shape); });
    }
}

void FirstSheet::offerPanels(const Project& project) {
    const StockPanel here = stockPanelOf(project);
    const QPushButton* stays = offer(m_panels, tr("The one that lies here"), panelText(here, project.units), QStringLiteral("panelHere"));
    connect(stays, &QPushButton::clicked, this, &FirstSheet::asideAsked);
    for (const StockPanel& panel : rackPanels()) {
        if (panel == here) continue;
        const QPushButton* button = offer(m_panels, panelText(panel, project.units), {}, QStringLiteral("rackPanel"));
        connect(button, &QPushButton::clicked, this, [this, panel] { Q_EMIT panelAsked(StockPanel(panel)); });
    }
}

void FirstSheet::offerShelf(Units units) {
    const QString folder = shelfFolder();
    if (!folder.isEmpty()) offerTemplates(m_shelf, templatesIn(folder, units, kMostOnShelf), QStringLiteral("shelfFile"));
    const QPushButton* choose = offer(m_shelf, folder.isEmpty() ? tr("Choose the shelf's folder…") : tr("Another folder…"), {}, QStringLiteral("chooseShelf"));
    connect(choose, &QPushButton::clicked, this, &FirstSheet::shelfAsked);
}

void FirstSheet::offerTemplates(Section& section, const std::vector<ShelfTemplate>& templates, const QString& name) {
    for (const ShelfTemplate& each : templates) {
        const QPushButton* button = offer(section, each.title, each.size.isEmpty() ? tr("can't be read") : each.size, name);
        connect(button, &QPushButton::clicked, this, [this, path = each.path] { Q_EMIT fileAsked(path); });
    }
}

// The offer that was taken is still at work while its place is made anew.
void FirstSheet::clear() {
    for (QPushButton* button : m_offers) {
        button->hide();
        button->setObjectName({});
        button->parentWidget()->layout()->removeWidget(button);
        button->deleteLater();
    }
    m_offers.clear();
}

void FirstSheet::focusFirst() {
    if (!m_offers.empty()) m_offers.front()->setFocus(Qt::TabFocusReason);
}

/// Arrow keys and Tab go from button to button by themselves.
void FirstSheet::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT asideAsked();
        return;
    }
    const auto here = std::ranges::find_if(m_offers, &QWidget::hasFocus);
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && here != m_offers.end()) return (*here)->click();
    QFrame::keyPressEvent(event);
}

}  // namespace kerfwall
