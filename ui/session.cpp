// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <algorithm>

#include "core/geometry/marking.h"
#include "core/geometry/moving.h"
#include "core/geometry/solve.h"
#include "core/says/project_text.h"

namespace kerfwall {
namespace {

constexpr qint64 kLargestFile = 16 * 1024 * 1024;  // bytes, as the project file says

Project blankSheet() {
    Project project;
    project.panel.width = 400;
    project.panel.height = 250;
    project.panel.thickness = 12;
    return project;
}

}  // namespace

Session::Session(QObject* parent) : QObject(parent) { startNew(); }

QString Session::name() const {
    if (!m_project.title.empty()) return QString::fromStdString(m_project.title);
    if (!m_path.isEmpty()) return QFileInfo(m_path).completeBaseName();
    return tr("Untitled template");
}

void Session::startNew() {
    const Project blank = blankSheet();
    m_saved = blank;  // an empty sheet asks no questions
    reset(blank, {});
}

void Session::start(const Project& project) {
    m_saved.reset();
    reset(project, {});
}

std::expected<void, QString> Session::open(const QString& path) {
    QFile file(path);
    const QString shown = QFileInfo(path).fileName();
    if (!file.open(QIODevice::ReadOnly)) {
        return std::unexpected(tr("%1 can't be opened: %2.").arg(shown, file.errorString()));
    }
    const QByteArray text = file.read(kLargestFile + 1);
    const auto project = readProject(std::string_view(text.constData(), static_cast<std::size_t>(text.size())));
    if (!project) {
        const Refusal& refusal = project.error();
        return std::unexpected(tr("%1 was not opened. %2 %3")
                                   .arg(shown, QString::fromStdString(refusal.pointer),
                                        QString::fromStdString(refusal.sentence))
                                   .simplified());
    }
    m_saved = *project;
    reset(*project, QFileInfo(path).absoluteFilePath());
    return {};
}

std::expected<void, QString> Session::save(const QString& path) {
    const std::string text = writeProject(m_project);
    QSaveFile file(path);
    const bool written = file.open(QIODevice::WriteOnly) &&
                         file.write(text.data(), static_cast<qint64>(text.size())) == static_cast<qint64>(text.size()) &&
                         file.commit();
    if (!written) {
        return std::unexpected(tr("%1 was not saved: %2. What stood there before is untouched.")
                                   .arg(QFileInfo(path).fileName(), file.errorString()));
    }
    m_path = QFileInfo(path).absoluteFilePath();
    m_saved = m_project;
    Q_EMIT changed();
    return {};
}

void Session::reset(const Project& project, const QString& path) {
    m_path = path;
    m_steps.clear();
    m_done = 0;
    m_inHand = false;
    m_highestLine = 0;
    for (const LayoutLine& line : project.lines) m_highestLine = std::max(m_highestLine, lineIdNumber(line.id));
    m_levelCut.at = project.panel.height / 2;
    m_uprightCut.at = project.panel.width / 2;
    put(project);
    Q_EMIT opened();
}

void Session::put(const Project& project) {
    m_project = project;
    m_solved = solve(m_project);
    m_findings = kerfwall::findings(m_project, m_solved);
    m_order = plan(m_project, m_solved);
    for (const CutDirection direction : kCutDirections) putCut(cut(direction));
    Q_EMIT changed();
}

void Session::record(const QString& name, const Project& before) {
    for (const LayoutLine& line : m_project.lines) m_highestLine = std::max(m_highestLine, lineIdNumber(line.id));
    if (before == m_project) return;
    m_steps.resize(m_done);
    m_steps.push_back({name, before, m_project});
    m_done = m_steps.size();
}

void Session::change(const QString& name, const Project& next) {
    if (m_inHand) commit();
    const Project before = m_project;
    const Solved solvedBefore = m_solved;
    changeWhole(name, carryCutouts(before, m_solved, next));
    if (m_project != before) tellVanished(before, solvedBefore);
}

void Session::changeWhole(const QString& name, const Project& next) {
    if (m_inHand) commit();
    if (next == m_project) return;
    const Project before = m_project;
    m_project = next;
    record(name, before);
    put(next);
}

void Session::begin(const QString& name) {
    if (m_inHand) commit();
    m_inHand = true;
    m_handName = name;
    m_before = m_project;
    m_solvedBefore = m_solved;
}

void Session::preview(const Project& next) {
    if (!m_inHand) return;
    const Project carried = carryCutouts(m_before, m_solvedBefore, next);
    if (carried != m_project) put(carried);
}

void Session::commit() {
    if (!m_inHand) return;
    m_inHand = false;
    record(m_handName, m_before);
    Q_EMIT changed();
    tellVanished(m_before, m_solvedBefore);
}

void Session::tellVanished(const Project& before, const Solved& solvedBefore) {
    for (const std::string& id : vanishedCutouts(before, solvedBefore, m_project)) {
        Q_EMIT told(tr("The lines leave no room for cutout %1: it is marked no more. Undo brings it back.")
                        .arg(QString::fromStdString(id)));
    }
}

void Session::abandon() {
    if (!m_inHand) return;
    m_inHand = false;
    put(m_before);
}

QString Session::undoName() const { return m_done == 0 ? QString() : m_steps[m_done - 1].name; }

QString Session::redoName() const { return m_done == m_steps.size() ? QString() : m_steps[m_done].name; }

void Session::undo() {
    if (m_inHand) return abandon();
    if (m_done == 0) return;
    --m_done;
    put(m_steps[m_done].before);
}

void Session::redo() {
    if (m_inHand || m_done == m_steps.size()) return;
    ++m_done;
    put(m_steps[m_done - 1].after);
}

LineId Session::freshLineId() const { return nextLineId(before(), m_highestLine); }

void Session::putCut(const CuttingLine& to) {
    const double within = std::clamp(to.at, 0.0, cutReach(m_project.panel, to.direction));
    (to.direction == CutDirection::Level ? m_levelCut : m_uprightCut).at = within;
}

void Session::showCuts(bool level, bool upright) {
    if (level == m_levelCutShown && upright == m_uprightCutShown) return;
    m_levelCutShown = level;
    m_uprightCutShown = upright;
    Q_EMIT cutMoved();
}

void Session::moveCut(const CuttingLine& to) {
    const CuttingLine before = cut(to.direction);
    putCut(to);
    if (cut(to.direction) != before) Q_EMIT cutMoved();
}

}  // namespace kerfwall
