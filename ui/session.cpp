// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session.h"

#include <QFile>
#include <QFileInfo>
#include <algorithm>

#include "core/geometry/marking.h"
#include "core/geometry/moving.h"
#include "core/says/project_text.h"
#include "ui/my_bench.h"
#include "ui/whole_file.h"

namespace kerfwall {
namespace {

constexpr int kRest = 250;  // ms after a change: a maker looks up

constexpr qint64 kLargestFile = 16 * 1024 * 1024;  // bytes, as the project file says

Project blankSheet() {
    Project project;
    project.panel.width = 400;
    project.panel.height = 250;
    project.panel.thickness = 12;
    project.bench = myBench();
    return project;
}

}  // namespace

Session::Session(QObject* parent) : QObject(parent) {
    connect(&m_answerer, &Answerer::answered, this, &Session::show);
    connect(&m_flexer, &Answerer::answered, this, &Session::takeFlex);
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRest);
    connect(&m_rest, &QTimer::timeout, this, [this] {
        m_askedFlexOf = m_shown;
        m_flexer.ask([shown = m_shown] { return answersWithFlex(*shown); });
    });
    startNew();
}

QString Session::name() const {
    if (!project().title.empty()) return QString::fromStdString(project().title);
    if (!m_path.isEmpty()) return QFileInfo(m_path).completeBaseName();
    return tr("Untitled template");
}

void Session::startNew() {
    const Project blank = blankSheet();
    m_saved = blank;  // an empty sheet asks no questions
    reset(blank, {});
}

void Session::start(const Project& project) {
    m_saved = project;  // nothing is lost with it
    reset(project, {});
}

void Session::takeUp(const Project& project, const QString& path) {
    m_saved.reset();
    reset(project, path);
}

std::expected<void, QString> Session::open(const QString& path) {
    QFile file(path);
    const QString shown = QFileInfo(path).fileName();
    if (!file.open(QIODevice::ReadOnly)) {
        return std::unexpected(tr("%1 can't be opened: %2.").arg(shown, file.errorString()));
    }
    const QByteArray text = file.read(kLargestFile + 1);
    const auto read = readProject(std::string_view(text.constData(), static_cast<std::size_t>(text.size())));
    if (!read) {
        const Refusal& refusal = read.error();
        return std::unexpected(tr("%1 was not opened. %2 %3")
                                   .arg(shown, QString::fromStdString(refusal.pointer),
                                        QString::fromStdString(refusal.sentence))
                                   .simplified());
    }
    m_saved = *read;
    reset(*read, QFileInfo(path).absoluteFilePath());
    return {};
}

std::expected<void, QString> Session::save(const QString& path) {
    const std::string text = writeProject(project());
    const auto written = writeWhole(path, text);
    if (!written) {
        return std::unexpected(tr("%1 was not saved: %2. What stood there before is untouched.")
                                   .arg(QFileInfo(path).fileName(), written.error()));
    }
    m_path = QFileInfo(path).absoluteFilePath();
    m_saved = project();
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
    m_answerer.forget();
    show(answersTo(project));
    Q_EMIT opened();
}

/// Taken only while the sheet is what it was when it was asked.
void Session::takeFlex(const AnswersPtr& answers) {
    if (m_shown != m_askedFlexOf) return;
    const bool isNews = answers->findings != m_shown->findings;
    m_shown = answers;
    if (isNews) Q_EMIT changed();
}

const Answers& Session::whole() {
    commit();
    if (!m_shown->hasFlex) {
        m_askedFlexOf = m_shown;
        takeFlex(answersWithFlex(*m_shown));
    }
    return *m_shown;
}

void Session::show(const AnswersPtr& answers) {
    m_shown = answers;
    if (!m_shown->hasFlex && !m_inHand) m_rest.start();
    for (const CutDirection direction : kCutDirections) putCut(cut(direction));
    Q_EMIT changed();
}

void Session::record(const QString& name, const Project& before) {
    for (const LayoutLine& line : project().lines) m_highestLine = std::max(m_highestLine, lineIdNumber(line.id));
    if (before == project()) return;
    m_steps.resize(m_done);
    m_steps.push_back({name, before, project()});
    m_done = m_steps.size();
}

void Session::change(const QString& name, const Project& next) {
    if (m_inHand) commit();
    const AnswersPtr before = m_shown;
    changeWhole(name, carryCutouts(before->project, before->solved, next));
    if (m_shown != before) tellVanished(*before);
}

void Session::changeWhole(const QString& name, const Project& next) {
    if (m_inHand) commit();
    if (next == project()) return;
    const AnswersPtr before = m_shown;
    m_shown = answersTo(next);
    record(name, before->project);
    show(m_shown);
}

void Session::begin(const QString& name) {
    if (m_inHand) commit();
    m_inHand = true;
    m_handName = name;
    m_before = m_shown;
}

void Session::preview(const Project& next) {
    if (!m_inHand) return;
    if (next.lines.size() > kLinesAtOnce) return m_answerer.ask([before = m_before, next] { return answersTo(*before, next); });
    m_answerer.forget();
    Project carried = carryCutouts(m_before->project, m_before->solved, next);
    if (carried != project()) show(answersTo(std::move(carried)));
}

void Session::commit() {
    if (!m_inHand) return;
    if (const AnswersPtr newest = m_answerer.wait()) m_shown = newest;
    m_inHand = false;
    record(m_handName, m_before->project);
    show(m_shown);
    tellVanished(*m_before);
}

void Session::tellVanished(const Answers& before) {
    for (const std::string& id : vanishedCutouts(before.project, before.solved, project())) {
        Q_EMIT told(tr("The lines leave no room for cutout %1: it is marked no more. Undo brings it back.")
                        .arg(QString::fromStdString(id)));
    }
}

void Session::abandon() {
    if (!m_inHand) return;
    m_inHand = false;
    m_answerer.forget();
    show(m_before);
}

QString Session::undoName() const { return m_done == 0 ? QString() : m_steps[m_done - 1].name; }

QString Session::redoName() const { return m_done == m_steps.size() ? QString() : m_steps[m_done].name; }

void Session::undo() {
    if (m_inHand) return abandon();
    if (m_done == 0) return;
    --m_done;
    show(answersTo(m_steps[m_done].before));
}

void Session::redo() {
    if (m_inHand || m_done == m_steps.size()) return;
    ++m_done;
    show(answersTo(m_steps[m_done - 1].after));
}

LineId Session::freshLineId() const { return nextLineId(before(), m_highestLine); }

void Session::putCut(const CuttingLine& to) {
    const double within = std::clamp(to.at, 0.0, cutReach(project().panel, to.direction));
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
