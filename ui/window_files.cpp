// SPDX-License-Identifier: GPL-3.0-or-later
// How the window opens, saves and closes; its layout stands in main_window.cpp.
#include <QCloseEvent>
#include <QDir>
#include <QDropEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QMenu>
#include <QMimeData>
#include <QSettings>
#include <QUrl>

#include "ui/kept_work.h"
#include "ui/main_window.h"
#include "ui/notice_bar.h"
#include "ui/papers.h"
#include "ui/plan_view.h"
#include "ui/sheet_progress.h"

namespace kerfwall {
namespace {

constexpr int kRecentFiles = 8;
const QString kRecentKey = QStringLiteral("recent");
const QString kSuffix = QStringLiteral(".kerfwall");

}  // namespace

void MainWindow::whenSafe(const std::function<void()>& does) {
    m_session.commit();
    if (m_session.isSaved()) return does();
    const auto saveFirst = [this, does] {
        save();
        if (m_session.isSaved()) does();
    };
    m_notice->ask(tr("%1 has changes that are not saved.").arg(m_session.name()),
                  {{tr("Save"), saveFirst},
                   {tr("Go on without saving"), does},
                   {tr("Stay here"), [this] { m_plan->setFocus(); }}});
}

void MainWindow::openFile(const QString& path) {
    whenSafe([this, path] {
        const auto opened = m_session.open(path);
        if (!opened) return m_notice->tell(opened.error());
        m_notice->close();
        remember(path);
        m_plan->setFocus();
    });
}

void MainWindow::keepUnsaved(const QString& folder) {
    m_keptFolder = folder;
    m_kept = new KeptWork(m_session, folder, this);
}

void MainWindow::offerLostWork() {
    const std::vector<LostWork> lost = lostWorkIn(m_keptFolder);
    if (lost.empty()) return;
    const LostWork& work = lost.front();
    const QString title = QString::fromStdString(work.project.title);
    const QString name = !title.isEmpty() ? title : work.path.isEmpty() ? tr("an untitled template") : QFileInfo(work.path).completeBaseName();
    const auto takeUp = [this, work] {
        m_session.takeUp(work.project, work.path);
        m_kept->keep();
        forget(work);
        m_plan->setFocus();
    };
    const auto throwAway = [this, work] {
        forget(work);
        m_plan->setFocus();
        offerLostWork();
    };
    m_notice->ask(tr("The program ended before work on %1 was saved, %2.").arg(name, QLocale().toString(work.when, QLocale::ShortFormat)),
                  {{tr("Take it up again"), takeUp}, {tr("Throw it away"), throwAway}, {tr("Ask again next time"), [this] { m_plan->setFocus(); }}});
}

void MainWindow::askNew() {
    whenSafe([this] {
        m_session.startNew();
        m_plan->setFocus();
    });
}

void MainWindow::askOpen() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Open a template"), QFileInfo(m_session.path()).path(),
                                                      tr("Templates (*.kerfwall);;All files (*)"));
    if (!path.isEmpty()) openFile(path);
}

bool MainWindow::saveTo(const QString& path) {
    m_session.commit();
    const auto saved = m_session.save(path);
    if (!saved) {
        m_notice->tell(saved.error());
        return false;
    }
    m_notice->close();
    remember(path);
    return true;
}

void MainWindow::save() {
    if (m_session.path().isEmpty()) return saveAs();
    saveTo(m_session.path());
}

void MainWindow::saveAs() {
    const QString proposed = m_session.path().isEmpty() ? m_session.name() + kSuffix : m_session.path();
    QString path = QFileDialog::getSaveFileName(this, tr("Save the template"), proposed, tr("Templates (*.kerfwall)"));
    if (path.isEmpty()) return;
    if (QFileInfo(path).suffix().isEmpty()) path += kSuffix;
    saveTo(path);
}

bool MainWindow::publishTo(const QString& dir) {
    const Answers& answers = m_session.whole();
    const Project& project = answers.project;
    const auto paper = paperOf(project.printing.paper, project.panel);
    if (!paper) {
        m_notice->tell(QString::fromStdString(paper.error()));
        return false;
    }
    SheetProgress progress(this);
    const auto done = publishPapers(project, answers.solved, answers.findings, answers.order, dir, *paper, progress.teller(), EdgeStrips::Made);
    m_notice->tell(done ? tr("The papers lie in %1.").arg(QDir::toNativeSeparators(dir)) : done.error());
    return done.has_value();
}

void MainWindow::askPublish() {
    const QString dir = QFileDialog::getExistingDirectory(this, tr("Publish the papers into"), QFileInfo(m_session.path()).path());
    if (!dir.isEmpty()) publishTo(dir);
}

void MainWindow::remember(const QString& path) {
    QSettings settings;
    QStringList recent = settings.value(kRecentKey).toStringList();
    const QString whole = QFileInfo(path).absoluteFilePath();
    recent.removeAll(whole);
    recent.prepend(whole);
    while (recent.size() > kRecentFiles) recent.removeLast();
    settings.setValue(kRecentKey, recent);
}

QStringList MainWindow::lastFiles() const { return QSettings().value(kRecentKey).toStringList(); }

void MainWindow::showRecent() {
    m_recent->clear();
    for (const QString& path : lastFiles()) {
        const QAction* action = m_recent->addAction(QFileInfo(path).fileName());
        connect(action, &QAction::triggered, this, [this, path] { openFile(path); });
    }
    if (m_recent->isEmpty()) m_recent->addAction(tr("No files yet"))->setEnabled(false);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    m_session.commit();
    if (m_closing || m_session.isSaved()) return event->accept();
    event->ignore();
    whenSafe([this] {
        m_closing = true;
        close();
    });
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    const QList<QUrl> urls = event->mimeData()->urls();
    if (urls.size() == 1 && urls.front().isLocalFile()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QString path = event->mimeData()->urls().front().toLocalFile();
    const bool isPicture = QFileInfo(path).suffix().compare(QLatin1String("svg"), Qt::CaseInsensitive) == 0;
    if (isPicture) importOutline(path);
    else openFile(path);
}

}  // namespace kerfwall
