// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_setting.h"

#include "core/drawing/drawn_size.h"
#include "core/geometry/edge_place.h"
#include "core/shop/panel_edges.h"
#include "core/shop/plunge_places.h"
#include "core/shop/step_text.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

QString sawWords(SawKind kind) {
    switch (kind) {
        case SawKind::RipFence:
            return PaperWords::tr("Rip fence");
        case SawKind::CrosscutSled:
            return PaperWords::tr("Crosscut sled");
        case SawKind::MitreGauge:
            return PaperWords::tr("Mitre gauge");
        case SawKind::GuideRail:
            return PaperWords::tr("Guide rail");
        case SawKind::SlidingMitre:
            break;
    }
    return PaperWords::tr("Sliding mitre saw");
}

QString taskWords(Task task) {
    switch (task) {
        case Task::Mark:
            return PaperWords::tr("Mark the edges");
        case Task::Bore:
            return PaperWords::tr("Bore the corner");
        case Task::Kerf:
            return PaperWords::tr("Saw");
        case Task::Drill:
            return PaperWords::tr("Drill the relief holes");
        case Task::Rough:
            return PaperWords::tr("Rough cut");
        case Task::Trim:
            return PaperWords::tr("Trim");
        case Task::Hole:
            return PaperWords::tr("Drill for the clamps");
        case Task::Fence:
            return PaperWords::tr("Fix the fence");
        case Task::Hand:
            return PaperWords::tr("By hand");
        case Task::Label:
            break;
    }
    return PaperWords::tr("Label the template");
}

QString edgeWords(Edge edge) {
    switch (edge) {
        case Edge::Bottom:
            return PaperWords::tr("bottom");
        case Edge::Right:
            return PaperWords::tr("right");
        case Edge::Top:
            return PaperWords::tr("top");
        case Edge::Left:
            break;
    }
    return PaperWords::tr("left");
}

QString sideWords(Side side) { return side == Side::Left ? PaperWords::tr("left") : PaperWords::tr("right"); }

QString degrees(double angle) { return QString::fromStdString(degreesText(angle)); }

class Figures {
  public:
    Figures(const Project& project, const Solved& solved, const WorkStep& step)
        : m_project(project), m_solved(solved), m_step(step), m_set(step.setting) {}

    std::vector<SettingFigure> all() {
        addPlace();
        addHeight();
        addRouter();
        addHoles();
        return m_figures;
    }

  private:
    void add(const QString& caption, double mm) {
        m_figures.push_back({caption, QString::fromStdString(drawnSetting(mm, m_project.units)), unit()});
    }
    [[nodiscard]] QString unit() const {
        return m_project.units == Units::Inches ? QStringLiteral("\"") : PaperWords::tr("mm");
    }
    void addPlace() {
        const auto& first = m_step.firstCut;
        const QString when = first ? PaperWords::tr(", first cut") : QString();
        if (m_set.fence) add(PaperWords::tr("Fence") + when, first ? first->at : *m_set.fence);
        if (m_set.stop) {
            add((m_step.stopSide ? PaperWords::tr("Stop, on your %1").arg(sideWords(*m_step.stopSide)) : PaperWords::tr("Stop")) + when,
                first ? first->at : *m_set.stop);
        }
        if (first) {
            add(first->layers > 0 ? PaperWords::tr("%1 layers of tape in, peel one a cut").arg(first->layers)
                                  : PaperWords::tr("then tape, one a cut up to %1").arg(first->mostLayers),
                first->thickness);
        }
        if (m_set.angle && *m_set.angle != 0) {
            m_figures.push_back({m_step.turn ? PaperWords::tr("Turned to the %1").arg(sideWords(*m_step.turn))
                                             : PaperWords::tr("Turned"),
                                 degrees(*m_set.angle), {}});
        }
        if (m_set.wedge) {
            add(PaperWords::tr("Wedge, over %1").arg(lengthWords(m_project, m_set.wedge->length)), m_set.wedge->rise);
        }
    }
    void addHeight() {
        const Saw* saw = findSaw(benchOf(m_project), m_step.saw);
        const bool onSled = saw && saw->kind == SawKind::CrosscutSled;
        if (m_set.bladeHeight) {
            add(onSled ? PaperWords::tr("Blade above the table") : PaperWords::tr("Blade up"), *m_set.bladeHeight);
        }
        if (m_set.depth) add(PaperWords::tr("Depth"), *m_set.depth);
        if (m_set.spacer) add(PaperWords::tr("Spacer"), *m_set.spacer);
        addPlunge();
    }
    /// In the order in which the saw comes to them; an end where it runs in or out over the panel's edge has no mark of its own.
    void addPlunge() {
        constexpr double kAtTheEdge = 0.005;  // mm
        const auto plunge = plungeFromStart(m_project.panel, m_solved, m_step);
        if (!plunge) return;
        const SolvedLine* line = findLine(m_solved, m_step.lines.front());
        if (plunge->surfaceFrom > kAtTheEdge) add(PaperWords::tr("Blade meets the face at"), plunge->surfaceFrom);
        add(PaperWords::tr("Full depth from"), plunge->fullFrom);
        add(PaperWords::tr("Full depth to"), plunge->fullTo);
        if (line && plunge->surfaceTo < distance(line->from, line->to) - kAtTheEdge) add(PaperWords::tr("Blade leaves the face at"), plunge->surfaceTo);
    }
    void addRouter() {
        if (m_set.bearing) {
            const bool table = benchOf(m_project).trimWith.value_or(Router::Table) == Router::Table;
            add(table ? PaperWords::tr("Bearing above the table") : PaperWords::tr("Bearing below the base"), *m_set.bearing);
        }
        if (m_set.bite) add(PaperWords::tr("Left to trim"), *m_set.bite);
        if (m_set.feedClockwise) {
            m_figures.push_back({PaperWords::tr("Feed"),
                                 *m_set.feedClockwise ? PaperWords::tr("clockwise") : PaperWords::tr("anticlockwise"), {}});
        }
    }
    /// A row of bores has one fence and a stop for each.
    void addStops() {
        if (m_set.stop || !m_step.stopEdge || m_step.bores.empty()) return;
        QStringList stops;
        for (const ReliefHole& bore : m_step.bores) {
            const double at = distanceFromEdge(m_project.panel, *m_step.stopEdge, bore.centre);
            stops.append(QString::fromStdString(drawnSetting(at, m_project.units)));
        }
        m_figures.push_back({PaperWords::tr("Stop, one after the other"), stops.join(QStringLiteral(", ")), unit()});
    }
    void addHoles() {
        addStops();
        if (!m_step.bores.empty()) add(PaperWords::tr("Diameter"), m_step.bores.front().diameter);
        if (m_step.clampHoles.empty()) return;
        const ClampHole& hole = m_project.clampHoles.at(m_step.clampHoles.front());
        add(PaperWords::tr("Diameter"), hole.diameter);
        add(PaperWords::tr("Depth"), hole.depth);
        add(PaperWords::tr("Below the layout face"), heightOf(m_project.panel, hole));
    }

    const Project& m_project;
    const Solved& m_solved;
    const WorkStep& m_step;
    const Setting& m_set;
    std::vector<SettingFigure> m_figures;
};

}  // namespace

std::vector<SettingFigure> settingFigures(const Project& project, const Solved& solved, const WorkStep& step) {
    return Figures(project, solved, step).all();
}

QString lengthWords(const Project& project, double mm) {
    const QString size = QString::fromStdString(drawnSetting(mm, project.units));
    return project.units == Units::Inches ? PaperWords::tr("%1\"").arg(size)
                                          : PaperWords::tr("%1 mm").arg(size);
}

QString stepTitle(const Project& project, const WorkStep& step) {
    QStringList lines;
    for (const LineId& line : step.lines) lines += QString::fromStdString(line);
    lines.removeDuplicates();
    const Saw* saw = step.saw.empty() ? nullptr : findSaw(benchOf(project), step.saw);
    if (step.task == Task::Mark && step.see.empty()) return PaperWords::tr("Check the reference edge");
    if (step.task != Task::Kerf) return taskWords(step.task);
    const QString machine = saw ? sawWords(saw->kind) : taskWords(step.task);
    return (lines.size() == 1 ? PaperWords::tr("%1: kerf %2") : PaperWords::tr("%1: kerfs %2"))
        .arg(machine, lines.join(PaperWords::tr(", ")));
}

QStringList lieWords(const WorkStep& step) {
    if (step.task == Task::Label || (step.task == Task::Mark && step.lines.empty())) return {};
    QStringList words{step.faceUp ? PaperWords::tr("layout face up") : PaperWords::tr("layout face down")};
    if (step.against) words += PaperWords::tr("%1 edge on the fence").arg(edgeWords(*step.against));
    if (step.stopEdge) words += PaperWords::tr("%1 edge at the stop").arg(edgeWords(*step.stopEdge));
    if (step.leads) words += PaperWords::tr("%1 end leads").arg(edgeWords(*step.leads));
    if (step.setting.plunge) words += PaperWords::tr("places measured along the line from where the saw starts");
    return words;
}

}  // namespace kerfwall
