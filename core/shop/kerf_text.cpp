// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/kerf_text.h"

#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"
#include "core/shop/lie.h"
#include "core/shop/rail_setting.h"
#include "core/shop/step_text.h"
#include "core/shop/word_list.h"

namespace kerfwall {

namespace {

/// Everything the sentences speak of.
struct Told {
    const Project& project;
    const Saw& saw;
    const Way& way;
};

std::string turnText(Side turn) {
    return turn == Side::Left ? "anticlockwise seen from above" : "clockwise seen from above";
}

std::string stopText(const Told& told) {
    const Way& way = told.way;
    if (!way.setting.stop) {
        return " Set no stop: bring each line's mark to the blade.";
    }
    return " Set the stop on the " + sideWord(*way.stopSide) + " of the blade, " +
           sizeText(told.project, *way.setting.stop) +
           (way.turn ? ", measured along the fence, from its face" : " from its face") +
           " to the nearer face of the blade, and hold the "
           "panel's " +
           edgeWord(*way.stopEdge) + " edge to it.";
}

std::string ripText(const Told& told) {
    const Way& way = told.way;
    const double fence = *way.setting.fence;
    std::string text = "On the table saw (" + told.saw.id + ") set the rip fence, on the " +
                       sideWord(told.saw.fenceSide) + " of the blade, " + sizeText(told.project, fence) +
                       " from its face to the nearer face of the blade";
    if (fence <= 0) {
        text += "; the blade runs into the fence, so fix a wooden face to it first";
    }
    return text + ". Set the blade " + sizeText(told.project, *way.setting.bladeHeight) +
           " above the table. Lay the panel layout face down with its " + edgeWord(*way.against) +
           " edge on the fence; the " + edgeWord(*way.leads) + " end leads.";
}

/// The end of the panel that stands off the fence: anticlockwise, the right one comes forward.
Edge wedgeEnd(const Saw& saw, const Way& way) {
    const Side off = saw.fenceFar ? *way.turn : otherSide(*way.turn);
    const bool atEnd = sideOfEnd(true, saw.fenceFar, way.faceUp) == off;
    return atEnd ? nextOf(*way.against) : previousOf(*way.against);
}

std::string sledText(const Told& told) {
    const Way& way = told.way;
    std::string text = "On the crosscut sled (" + told.saw.id + ") set the blade " +
                       sizeText(told.project, *way.setting.bladeHeight) + " above the table, " +
                       sizeText(told.project, *way.setting.bladeHeight - told.saw.base) +
                       " above the sled's base of " + sizeText(told.project, told.saw.base) +
                       ". Lay the panel layout face down with its " + edgeWord(*way.against) +
                       " edge on the sled's fence, which is " + (told.saw.fenceFar ? "far from" : "near to") +
                       " you; the " + edgeWord(*way.leads) + " edge leads.";
    if (way.setting.wedge) {
        text += " Put a wedge between panel and fence that rises " +
                sizeText(told.project, way.setting.wedge->rise) + " over " +
                sizeText(told.project, way.setting.wedge->length) + ", so that the panel's " +
                edgeWord(wedgeEnd(told.saw, way)) + " end stands off: the panel is turned " +
                turnText(*way.turn) + ".";
    }
    return text + stopText(told);
}

std::string gaugeText(const Told& told) {
    const Way& way = told.way;
    std::string text = "On the table saw with the mitre gauge (" + told.saw.id + ") set the blade " +
                       sizeText(told.project, *way.setting.bladeHeight) + " above the table";
    if (way.turn) {
        text += " and turn the gauge " + degreesText(*way.setting.angle) + " from square, " +
                turnText(*way.turn) + ", its " + sideWord(*way.turn) + " end towards you";
    } else {
        text += " and the gauge square";
    }
    return text + ". Lay the panel layout face down with its " + edgeWord(*way.against) +
           " edge on the gauge's fence; the " + edgeWord(*way.leads) + " edge leads." + stopText(told);
}

std::string plungeText(const Told& told, const SolvedLine& line, bool pushedAlong) {
    const PlungeMarks& marks = *told.way.setting.plunge;
    const double run = distance(line.from, line.to);
    const auto at = [&](double place) { return sizeText(told.project, pushedAlong ? place : run - place); };
    const double first = pushedAlong ? marks.surfaceFrom : marks.surfaceTo;
    const double last = pushedAlong ? marks.surfaceTo : marks.surfaceFrom;
    const double fullFirst = pushedAlong ? marks.fullFrom : marks.fullTo;
    const double fullLast = pushedAlong ? marks.fullTo : marks.fullFrom;
    const bool enters = std::abs(fullFirst - (pushedAlong ? 0 : run)) < kAtTheEdge;
    const bool leaves = std::abs(fullLast - (pushedAlong ? run : 0)) < kAtTheEdge;
    std::string text = " Measure along " + line.id + " from where the saw starts on the " +
                       edgeWord(told.way.leads.value_or(told.project.panel.referenceEdge)) + " edge: ";
    text += enters ? "enter at the edge at full depth"
                   : "plunge so that the blade meets the face at " + at(first) + " and is at full depth at " +
                         at(fullFirst);
    text += leaves ? "; saw on out of the panel."
                   : "; stop with the blade at full depth at " + at(fullLast) + ", its run out ending at " +
                         at(last) + ".";
    return text;
}

std::string railText(const Told& told, const SolvedLine& line, const KerfAsked& asked) {
    const bool pushedAlong = isPushedAlong(told.saw, asked);
    const Way& way = told.way;
    std::string text = "With the saw on its rail (" + told.saw.id + ") set the depth scale to " +
                       sizeText(told.project, *way.setting.depth) +
                       ". Lay the panel layout face up and the rail on the kept side of " + line.id +
                       ", its edge on the line";
    if (way.turn) {
        text += ", " + degreesText(*way.setting.angle) + " " +
                (*way.turn == Side::Left ? "anticlockwise" : "clockwise") + " from the " +
                edgeWord(told.project.panel.referenceEdge) + " edge";
    }
    text += ". Push the saw in from the " + edgeWord(*way.leads) + " edge, the rail on the " +
            sideWord(told.saw.railSide) + " of the cut.";
    const double under = panelUnderRail(told.project.panel, asked);
    if (under < told.saw.railWidth) {
        text += " Only " + sizeText(told.project, under) + " of panel lies under the rail of " +
                sizeText(told.project, told.saw.railWidth) + ": support it with a piece as thick as the panel.";
    }
    return way.setting.plunge ? text + plungeText(told, line, pushedAlong) : text;
}

std::string mitreText(const Told& told, const SolvedLine& line, bool towardsEnd) {
    const Way& way = told.way;
    std::string text = "On the sliding mitre saw (" + told.saw.id + ") set the depth stop to a kerf of " +
                       sizeText(told.project, *way.setting.depth);
    if (way.turn) {
        text += " and turn its arm " + degreesText(*way.setting.angle) + " from square, " +
                turnText(*way.turn) + ", its handle to the " + sideWord(otherSide(*way.turn));
    }
    text += ". Lay the panel layout face up with its " + edgeWord(*way.against) + " edge to the fence";
    if (way.setting.spacer) {
        text += " and a piece " + sizeText(told.project, *way.setting.spacer) +
                " thick between them, so that the kerf has its depth there too";
    }
    text += "." + stopText(told);
    return way.setting.plunge ? text + plungeText(told, line, towardsEnd) : text;
}

std::string settingText(const Told& told, const SolvedLine& line, const Kerf& kerf) {
    const KerfAsked asked = askedOf(line, kerf);
    switch (told.saw.kind) {
        case SawKind::RipFence:
            return ripText(told);
        case SawKind::CrosscutSled:
            return sledText(told);
        case SawKind::MitreGauge:
            return gaugeText(told);
        case SawKind::GuideRail:
            return railText(told, line, asked);
        case SawKind::SlidingMitre:
            break;
    }
    // The sliding saw starts at the edge far from its fence.
    const Point inward = leftOf(edgeHeading(*told.way.against));
    return mitreText(told, line, dot(line.to - line.from, inward) < 0);
}

std::string marksText(const Project& project, const Solved& solved, const std::vector<PlannedKerf>& planned) {
    std::string text = " Cut";
    for (std::size_t i = 0; i < planned.size(); ++i) {
        const SolvedLine& line = solved.lines[planned[i].line];
        std::vector<std::string> marks;
        for (const EdgeMark& mark : marksInView(line, planned[i].way)) {
            marks.push_back(markText(project, mark));
        }
        text += (i > 0 ? "; " : " ") + line.id + " to its mark" + (marks.size() > 1 ? "s " : " ") +
                listText(marks);
    }
    return text + ", the kerf on the ticked side of the line.";
}

std::string beyondText(const Project& project, const Way& way, const LineId& line) {
    if (!way.saw) {
        return "No saw on the bench can cut " + line + ": add one that can, or move the line.";
    }
    return "The saw " + benchOf(project).saws[*way.saw].id + " cannot make the cut " + line +
           " asks for: choose another for it, or move the line.";
}

}  // namespace

std::string kerfText(const Project& project, const Solved& solved, const std::vector<PlannedKerf>& planned) {
    const Way& way = planned.front().way;
    const SolvedLine& line = solved.lines[planned.front().line];
    if (way.beyondSaw) {
        return beyondText(project, way, line.id);
    }
    Told told{project, benchOf(project).saws[*way.saw], way};
    return settingText(told, line, line.kerfs[planned.front().kerf]) + marksText(project, solved, planned);
}

}  // namespace kerfwall
