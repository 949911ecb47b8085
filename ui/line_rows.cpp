// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/line_rows.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/geometry/edge_place.h"
#include "core/geometry/relaying.h"
#include "core/says/line_names.h"
#include "ui/hold_words.h"
#include "ui/line_entry.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr int kMostNumbers = 4;           // of any way of laying: two points
constexpr std::size_t kMostCrossings = 12;  // offered to lay a line through

using Answer = std::expected<Project, QString>;
using About = std::variant<Centre, LineId>;

QString text(const char* source) { return QCoreApplication::translate("kerfwall::LineRows", source); }
QString plain(const std::string& s) { return QString::fromStdString(s); }

template <typename T>
const T* placeOf(const LineView& view) {
    return std::get_if<T>(&view.line.place);
}

/// The project with its line changed by `does`.
template <typename Does>
Answer withLine(const LineView& view, const Does& does) {
    Project next = view.project;
    does(*std::ranges::find(next.lines, view.line.id, &LayoutLine::id));
    return next;
}

Answer withPlace(const LineView& view, const Place& place) {
    return withLine(view, [&](LayoutLine& line) { line.place = place; });
}

template <typename T>
int indexOf(const std::vector<T>& all, const T& one) {
    return static_cast<int>(std::ranges::find(all, one) - all.begin());
}

template <typename T>
const T& pickedOf(const std::vector<T>& all, const RowValue& value) {
    return all.at(static_cast<std::size_t>(std::get<int>(value)));
}

LineRow choiceRow(const char* name, const char* label) {
    LineRow row;
    row.name = QString::fromLatin1(name);
    row.label = [label](const LineView&) { return text(label); };
    row.isShown = [](const LineView&) { return true; };
    return row;
}

LineRow nameRow() {
    LineRow row = choiceRow("lineName", "Name");
    row.kind = LineRow::Kind::Words;
    row.words = [](const LineView& view) { return plain(view.line.id); };
    row.set = [](const LineView& view, const RowValue& value) -> Answer {
        const auto next = renamedLine(view.project, view.line.id, std::get<QString>(value).toStdString());
        if (!next) return std::unexpected(plain(next.error()));
        return *next;
    };
    return row;
}

LineRow wayRow() {
    LineRow row = choiceRow("lineWay", "Laid");
    row.options = [](const LineView&) {
        return QStringList{text("by a distance"), text("by an angle"), text("through two points"), text("between two edge marks"),
                           text("as a mirror image")};
    };
    row.chosen = [](const LineView& view) { return static_cast<int>(wayOf(view.line.place)); };
    row.set = [](const LineView& view, const RowValue& value) -> Answer {
        const auto place = relaid(view.project, view.solved, view.line.id, static_cast<Way>(std::get<int>(value)));
        if (place) return withPlace(view, *place);
        return std::unexpected(place.error() == NoRelaying::NoOtherLine
                                   ? text("There is no other line it could be the mirror image of: lay one first.")
                                   : text("This line has no place to keep: change what it is laid from first."));
    };
    return row;
}

LineRow fromRow() {
    LineRow row = choiceRow("lineFrom", "From");
    row.isShown = [](const LineView& view) { return placeOf<ByOffset>(view) || placeOf<ByAngle>(view); };
    row.options = [](const LineView& view) {
        QStringList options;
        for (const Base& base : basesFor(view.project, view.line.id)) options << baseText(base);
        return options;
    };
    row.chosen = [](const LineView& view) {
        const auto* offset = placeOf<ByOffset>(view);
        return indexOf(basesFor(view.project, view.line.id), offset ? offset->from : placeOf<ByAngle>(view)->from);
    };
    row.set = [](const LineView& view, const RowValue& value) {
        const std::vector<Base> bases = basesFor(view.project, view.line.id);
        return withLine(view, [&](LayoutLine& line) {
            if (auto* offset = std::get_if<ByOffset>(&line.place)) offset->from = pickedOf(bases, value);
            if (auto* angle = std::get_if<ByAngle>(&line.place)) angle->from = pickedOf(bases, value);
        });
    };
    return row;
}

LineRow throughRow() {
    LineRow row = choiceRow("lineThrough", "Through");
    row.isShown = [](const LineView& view) { return placeOf<ByAngle>(view) != nullptr; };
    row.options = [](const LineView& view) {
        QStringList options{text("a point")};
        for (const CrossingOf& crossing : crossingsFor(view.project, view.solved, view.line.id, kMostCrossings)) {
            options << text("crossing of %1, %2").arg(plain(crossing.first), plain(crossing.second));
        }
        return options;
    };
    row.chosen = [](const LineView& view) {
        // The crossing it is laid through is the first that is offered.
        return std::holds_alternative<CrossingOf>(placeOf<ByAngle>(view)->through) ? 1 : 0;
    };
    row.set = [](const LineView& view, const RowValue& value) {
        const int option = std::get<int>(value);
        std::optional<CrossingOf> crossing;
        if (option > 0) crossing = crossingsFor(view.project, view.solved, view.line.id, kMostCrossings).at(static_cast<std::size_t>(option) - 1);
        return withPlace(view, laidThrough(view.project, view.solved, view.line.id, crossing));
    };
    return row;
}

/// The edge of the first or the second mark; on another edge it keeps its number as far as that is long.
LineRow edgeRow(const char* name, const char* label, EdgeMark ByMarks::*mark) {
    LineRow row = choiceRow(name, label);
    row.isShown = [](const LineView& view) { return placeOf<ByMarks>(view) != nullptr; };
    row.options = [](const LineView&) {
        QStringList options;
        for (const Edge edge : kEdges) options << edgeText(edge);
        return options;
    };
    row.chosen = [mark](const LineView& view) { return static_cast<int>((placeOf<ByMarks>(view)->*mark).edge); };
    row.set = [mark](const LineView& view, const RowValue& value) {
        return withLine(view, [&](LayoutLine& line) {
            EdgeMark& at = std::get<ByMarks>(line.place).*mark;
            at.edge = static_cast<Edge>(std::get<int>(value));
            at.at = std::min(at.at, edgeLength(view.project.panel, at.edge));
        });
    };
    return row;
}

LineRow ofRow() {
    LineRow row = choiceRow("lineOf", "Mirror image of");
    row.isShown = [](const LineView& view) { return placeOf<ByMirror>(view) != nullptr; };
    row.options = [](const LineView& view) {
        QStringList options;
        for (const LineId& id : linesFor(view.project, view.line.id)) options << baseText(id);
        return options;
    };
    row.chosen = [](const LineView& view) { return indexOf(linesFor(view.project, view.line.id), placeOf<ByMirror>(view)->of); };
    row.set = [](const LineView& view, const RowValue& value) {
        ByMirror place = *placeOf<ByMirror>(view);
        place.of = pickedOf(linesFor(view.project, view.line.id), value);
        return withPlace(view, place);
    };
    return row;
}

std::vector<About> aboutsFor(const LineView& view) {
    std::vector<About> abouts{Centre::Upright, Centre::Level};
    for (const LineId& id : linesFor(view.project, view.line.id)) abouts.emplace_back(id);
    return abouts;
}

LineRow aboutRow() {
    LineRow row = choiceRow("lineAbout", "about");
    row.isShown = [](const LineView& view) { return placeOf<ByMirror>(view) != nullptr; };
    row.options = [](const LineView& view) {
        QStringList options;
        for (const About& about : aboutsFor(view)) options << aboutText(about);
        return options;
    };
    row.chosen = [](const LineView& view) { return indexOf(aboutsFor(view), placeOf<ByMirror>(view)->about); };
    row.set = [](const LineView& view, const RowValue& value) {
        ByMirror place = *placeOf<ByMirror>(view);
        place.about = pickedOf(aboutsFor(view), value);
        return withPlace(view, place);
    };
    return row;
}

LineRow numberRow(int index) {
    LineRow row;
    row.kind = LineRow::Kind::Number;
    row.name = QStringLiteral("lineNumber%1").arg(index);
    const auto fieldOf = [index](const LineView& view) -> std::optional<EntryField> {
        const std::vector<EntryField> fields = lineFields(view.project, view.line.id);
        if (static_cast<std::size_t>(index) >= fields.size()) return std::nullopt;
        return fields[static_cast<std::size_t>(index)];
    };
    row.number = fieldOf;
    row.label = [fieldOf](const LineView& view) { return fieldOf(view) ? fieldOf(view)->label : QString(); };
    row.isShown = [fieldOf](const LineView& view) { return fieldOf(view).has_value(); };
    row.set = [index](const LineView& view, const RowValue& value) -> Answer {
        const auto next = withLineField(view.project, view.line.id, index, std::get<double>(value));
        if (next) return *next;
        return std::unexpected(text("A line is laid by lengths up to 10000 mm and angles up to 360°; its marks lie on their edges, its two points apart."));
    };
    return row;
}

LineRow meansRow() {
    LineRow row = choiceRow("lineMeans", "It is");
    row.options = [](const LineView&) { return QStringList{text("a line to cut"), text("a mark only")}; };
    row.chosen = [](const LineView& view) { return view.line.cut ? 0 : 1; };
    row.set = [](const LineView& view, const RowValue& value) {
        return withLine(view, [&](LayoutLine& line) { line.cut = std::get<int>(value) == 0; });
    };
    return row;
}

LineRow faceRow() {
    LineRow row = choiceRow("lineFace", "Drawn on");
    row.options = [](const LineView&) { return QStringList{text("the layout face"), text("the back"), text("both faces")}; };
    row.chosen = [](const LineView& view) { return static_cast<int>(view.line.drawnOn); };
    row.set = [](const LineView& view, const RowValue& value) {
        return withLine(view, [&](LayoutLine& line) { line.drawnOn = static_cast<Face>(std::get<int>(value)); });
    };
    return row;
}

LineRow extentRow() {
    LineRow row = choiceRow("lineExtent", "Its kerf runs");
    row.isShown = [](const LineView& view) { return view.line.cut; };
    row.options = [](const LineView&) { return QStringList{text("as the plan works out"), text("through"), text("stopped")}; };
    row.chosen = [](const LineView& view) { return static_cast<int>(view.line.extent); };
    row.set = [](const LineView& view, const RowValue& value) {
        return withLine(view, [&](LayoutLine& line) { line.extent = static_cast<Extent>(std::get<int>(value)); });
    };
    return row;
}

LineRow sawRow() {
    LineRow row = choiceRow("lineSaw", "Saw");
    row.isShown = [](const LineView& view) { return view.line.cut; };
    row.options = [](const LineView& view) {
        QStringList options{text("as the plan chooses")};
        for (const Saw& saw : benchOf(view.project).saws) options << plain(saw.id);
        return options;
    };
    row.chosen = [](const LineView& view) {
        if (!view.line.saw) return 0;
        const std::vector<Saw>& saws = benchOf(view.project).saws;
        return static_cast<int>(std::ranges::find(saws, *view.line.saw, &Saw::id) - saws.begin()) + 1;
    };
    row.set = [](const LineView& view, const RowValue& value) {
        const int option = std::get<int>(value);
        return withLine(view, [&](LayoutLine& line) {
            if (option == 0) line.saw.reset();
            else line.saw = benchOf(view.project).saws.at(static_cast<std::size_t>(option) - 1).id;
        });
    };
    return row;
}

}  // namespace

std::vector<LineRow> lineRows() {
    std::vector<LineRow> rows{nameRow(), wayRow(), fromRow(), throughRow(), ofRow(), aboutRow(),
                              edgeRow("lineEdgeA", "First mark on", &ByMarks::a), edgeRow("lineEdgeB", "Second mark on", &ByMarks::b)};
    for (int i = 0; i < kMostNumbers; ++i) rows.push_back(numberRow(i));
    for (LineRow& row : std::vector<LineRow>{meansRow(), faceRow(), extentRow(), sawRow()}) rows.push_back(std::move(row));
    return rows;
}

}  // namespace kerfwall
