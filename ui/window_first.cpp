// SPDX-License-Identifier: GPL-3.0-or-later
// How the window begins a template; its layout stands in main_window.cpp.
#include <QFileDialog>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/first_sheet.h"
#include "ui/job_card.h"
#include "ui/main_window.h"
#include "ui/notice_bar.h"
#include "ui/plan_view.h"
#include "ui/rack.h"
#include "ui/shelf.h"
#include "ui/tool_strip.h"
#include "ui/wanted_form.h"
#include "ui/wish_words.h"

namespace kerfwall {

void MainWindow::layFirstSheet() {
    m_first = new FirstSheet(m_plan);
    auto* onPlan = new QVBoxLayout(m_plan);
    onPlan->setContentsMargins(0, 0, 0, 0);
    onPlan->setSizeConstraint(QLayout::SetNoConstraint);
    onPlan->addWidget(m_first);
    m_first->hide();
    m_firstPanel = stockPanelOf(m_session.project());
}

void MainWindow::connectFirstSheet() {
    connect(m_first, &FirstSheet::sizeAsked, this, [this](int shape) {
        m_wantedForm->chooseShape(static_cast<WantedForm::Shape>(shape));
        layWantedForm();
    });
    connect(m_first, &FirstSheet::panelAsked, this, [this](const StockPanel& panel) {
        const Project& project = m_session.project();
        m_session.change(tr("Take a panel of %1").arg(panelText(panel, project.units)), onPanel(project, panel));
        putFirstAside();
    });
    connect(m_first, &FirstSheet::fileAsked, this, &MainWindow::openFile);
    connect(m_first, &FirstSheet::sampleAsked, this, &MainWindow::openSample);
    connect(m_first, &FirstSheet::shelfAsked, this, &MainWindow::chooseShelf);
    connect(m_first, &FirstSheet::asideAsked, this, &MainWindow::putFirstAside);
    connect(m_strip, &ToolStrip::chosen, this, &MainWindow::putFirstAside);
    connect(&m_session, &Session::opened, this, [this] {
        m_firstAside = false;
        m_firstPanel = stockPanelOf(m_session.project());
        if (isFirst()) m_first->refresh(m_session.project(), lastFiles());
        refreshFirst();
    });
}

bool MainWindow::isFirst() const {
    const Project& project = m_session.project();
    return !m_firstAside && !m_card->form() && m_session.path().isEmpty() && isPanelFree(project) &&
           stockPanelOf(project) == m_firstPanel;
}

void MainWindow::refreshFirst() {
    const bool was = !m_first->isHidden();
    if (isFirst() && (!was || !m_first->isIn(m_session.project().units))) m_first->refresh(m_session.project(), lastFiles());
    if (isFirst() == was) return;
    if (was && m_first->isAncestorOf(focusWidget())) m_plan->setFocus();  // before Tab's order is asked where to go
    m_first->setVisible(!was);
    refreshEntry();
    if (!was && focusWidget() == m_plan) m_first->focusFirst();
}

void MainWindow::putFirstAside() {
    m_firstAside = true;
    refreshFirst();
    m_plan->setFocus();
}

void MainWindow::layWantedForm() {
    m_session.commit();
    m_card->layForm(m_wantedForm);
    m_wantedForm->focusFirst();
    refreshFirst();
}

void MainWindow::chooseShelf() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("The folder of the shop's templates"), shelfFolder());
    if (folder.isEmpty()) return;
    keepShelfFolder(folder);
    m_first->refresh(m_session.project(), lastFiles());
}

void MainWindow::openSample(const QString& path) {
    whenSafe([this, path] {
        const auto sample = readTemplate(path);
        if (!sample) return m_notice->tell(sample.error());
        m_session.start(*sample);
        m_plan->setFocus();
    });
}

void MainWindow::switchRack() {
    const StockPanel panel = stockPanelOf(m_session.project());
    std::vector<StockPanel> rack = rackPanels();
    if (std::erase(rack, panel) == 0) rack.push_back(panel);
    keepRack(rack);
}

}  // namespace kerfwall
