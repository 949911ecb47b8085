// SPDX-License-Identifier: GPL-3.0-or-later
// What the window does to what is picked; its layout stands in main_window.cpp.
#include <QApplication>
#include <QClipboard>
#include <QMenu>

#include "core/geometry/picking.h"
#include "core/geometry/snippet.h"
#include "core/geometry/taking_away.h"
#include "ui/entry_line.h"
#include "ui/main_window.h"
#include "ui/notice_bar.h"
#include "ui/pick_tool.h"
#include "ui/picked_text.h"
#include "ui/sizes_on_plan.h"
#include "ui/things_mime.h"

namespace kerfwall {
namespace {

constexpr double kAside = 10;          // mm; how far what finds its place taken is put aside
constexpr double kInchesAside = 12.7;  // half an inch

}  // namespace

void MainWindow::makePickedMenu(QMenu* edit) {
    const auto onPicked = [&](const QString& text, const QKeySequence& key, auto does) {
        m_onPicked.push_back(edit->addAction(text, key, this, does));
    };
    onPicked(tr("Cu&t"), QKeySequence::Cut, &MainWindow::cutPicked);
    onPicked(tr("&Copy"), QKeySequence::Copy, &MainWindow::copyPicked);
    edit->addAction(tr("&Paste"), QKeySequence::Paste, this, &MainWindow::paste);
    onPicked(tr("D&ouble it beside itself"), QKeySequence(Qt::CTRL | Qt::Key_D), &MainWindow::doublePicked);
    edit->addSeparator();
    edit->addAction(tr("Pick &everything"), QKeySequence::SelectAll, this, &MainWindow::pickAll);
    onPicked(tr("T&ake away what is picked"), QKeySequence(Qt::Key_Delete), &MainWindow::deletePicked);
    edit->addSeparator();
    edit->addAction(tr("&Set a size on the drawing"), QKeySequence(Qt::Key_F12), this, &MainWindow::setNextSize);
    onPicked(tr("&Move by numbers"), QKeySequence(Qt::CTRL | Qt::Key_M), [this] { begin(DeedKind::Move); });
    onPicked(tr("Tu&rn"), QKeySequence(Qt::CTRL | Qt::Key_R), [this] { begin(DeedKind::Turn); });
    onPicked(tr("M&irror"), QKeySequence(Qt::CTRL | Qt::Key_I), [this] { begin(DeedKind::Mirror); });
    onPicked(tr("Copy at a &distance"), QKeySequence(Qt::CTRL | Qt::Key_K), [this] { begin(DeedKind::Copy); });
}

void MainWindow::deletePicked() {
    m_session.commit();
    const Picked picked = stillThere(m_session.project(), m_selection.picked());
    if (picked.isEmpty()) return;
    const bool unmarks = !m_selection.cutout().empty();
    m_selection.clear();
    m_session.change(unmarks ? tr("Unmark waste") : tr("Take %1 away").arg(pickedText(picked)),
                     withoutPicked(m_session.project(), m_session.solved(), picked));
}

void MainWindow::pickAll() {
    chooseTool(PickAt);
    m_selection.pick(everythingOf(m_session.project(), m_session.solved()));
}

void MainWindow::begin(DeedKind kind) {
    chooseTool(PickAt);
    m_pick->begin(kind);
    m_entry->focusFirstField();
}

void MainWindow::copyPicked() {
    m_session.commit();
    if (m_selection.isEmpty()) return;
    QApplication::clipboard()->setMimeData(thingsMime(snippetOf({m_session.project(), m_session.solved(), m_selection.picked()})));
}

void MainWindow::cutPicked() {
    copyPicked();
    // A cutout is cut with its walls: they are on the clipboard too.
    m_selection.pick(withWalls(m_session.project(), m_session.solved(), m_selection.picked()));
    deletePicked();
}

void MainWindow::paste() {
    m_session.commit();
    const auto snippet = thingsFrom(QApplication::clipboard()->mimeData());
    if (!snippet) return m_notice->tell(snippet.error());
    put(*snippet, tr("Paste"));
}

void MainWindow::doublePicked() {
    m_session.commit();
    if (m_selection.isEmpty()) return;
    put(snippetOf({m_session.project(), m_session.solved(), m_selection.picked()}), tr("Double"));
}

void MainWindow::put(const Project& snippet, const QString& name) {
    const Project& project = m_session.project();
    const double aside = project.units == Units::Inches ? kInchesAside : kAside;
    const auto made = pasted(project, snippet, aside, m_session.highestLine());
    if (!made) return m_notice->tell(whyNot(made.error()));
    chooseTool(PickAt);
    m_session.change(tr("%1 %2").arg(name, pickedText(made->picked)), made->project);
    m_selection.pick(made->picked);
}

void MainWindow::setNextSize() {
    if (m_tool != m_pick) chooseTool(PickAt);
    if (!m_sizes->openNext()) m_notice->tell(tr("No size of what is picked stands on the drawing; mark waste between lines, or show the dimensions."));
}

void MainWindow::openWindow() {
    auto* window = new MainWindow;
    window->setAttribute(Qt::WA_DeleteOnClose);
    if (m_kept) window->keepUnsaved(m_keptFolder);
    window->move(pos() + QPoint(30, 30));
    window->show();
}

}  // namespace kerfwall
