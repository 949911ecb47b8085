// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/layout_from_bytes.h"

#include <set>
#include <string>

#include "core/geometry/solve.h"
#include "tests/oracle/byte_reader.h"
#include "tests/oracle/plain_layout.h"
#include "tests/oracle/spelt_line.h"

namespace kerfwall::oracle {
namespace {

constexpr std::array kSizes{100.0, 60.0, 80.0,  120.0, 150.0, 200.0,  250.0,  40.0,
                            25.4,  10.0, 300.0, 400.0, 610.0, 1220.0, 2440.0, 3000.0};
constexpr std::array kBits{12.7, 6.0, 8.0, 10.0, 6.35, 16.0, 19.0, 9.5, 12.0, 2.0, 3.0, 25.4, 32.0, 40.0, 50.0, 60.0};
constexpr std::array kKerfs{3.2, 2.4, 1.8, 3.0, 2.2, 3.175, 0.5, 5.0, 7.0, 10.0};
constexpr std::array kBlades{160.0, 184.0, 254.0, 80.0, 450.0};
constexpr std::array kDepths{6.0, 3.0, 9.0, 1.5};
constexpr std::array kGuides{17.0, 30.0, 24.0, 10.0, 12.7, 6.35, 12.0, 40.0};
constexpr std::array kBores{10.0, 8.0, 15.0, 20.0, 6.36, 12.5, 30.0, 1.0};
constexpr std::array<std::size_t, 8> kCutouts{1, 1, 1, 1, 1, 2, 2, 3};
constexpr std::array kHops{0.5, 0.01, 3.0, 1e-6};  // mm past a face's side to the next seed

// Eight bytes say panel, tools, use and the numbers of lines and cutouts.
struct Counts {
    std::size_t lines = 0;
    std::size_t cutouts = 0;
};

Saw railOf(const std::string& id, std::size_t kerf, std::size_t blade) {
    Saw saw;
    saw.id = id;
    saw.kind = SawKind::GuideRail;
    saw.kerf = oneOf(kKerfs, kerf);
    saw.blade = oneOf(kBlades, blade);
    return saw;
}

Use useSaid(std::size_t byte) {
    Use use;
    if (byte < 128) return use;
    use.byBush = byte >= 192;
    (use.byBush ? use.bush : use.bearing) = oneOf(kGuides, byte / 4);
    use.bit = oneOf(kBits, byte / 4 % 5);
    use.inKerfs = byte % 64 == 63;
    return use;
}

Counts sayPanelAndTools(Project& project, ByteReader& bytes) {
    const auto [width, height, bit, kerf, blade, use, lines, cutouts] = bytes.take<8>();
    project.panel.width = oneOf(kSizes, width);
    project.panel.height = oneOf(kSizes, height);
    project.panel.thickness = 18;
    project.kerfDepth = oneOf(kDepths, use);
    project.use = useSaid(use);
    Bench bench;
    bench.saws = {railOf("rail", kerf % 16, blade % 16), railOf("other", kerf / 16, blade / 16)};
    bench.trimBit = TrimBit{};
    bench.trimBit->diameter = oneOf(kBits, bit);
    project.bench = bench;
    return {3 + (lines % 4 == 3 ? lines / 4 % 10 : lines / 4 % 4), oneOf(kCutouts, cutouts)};
}

// The place past one side of a face.
Point across(const std::vector<Point>& face, std::size_t side, double hop) {
    const Point a = face[side % face.size()];
    const Point b = face[(side + 1) % face.size()];
    return toPart(0.5 * (a + b) - hop * leftOf(unit(b - a)), kFinest);
}

// Marks cutouts whose faces are their own.
class SpeltCutouts {
  public:
    explicit SpeltCutouts(Project& project) : m_project(project) {}

    /// Adds one cutout, or none where its first seed lies in no free face; takes six bytes.
    void add(ByteReader& bytes) {
        const auto [x, y, form, first, second, bore] = bytes.take<6>();
        const Panel& panel = m_project.panel;
        Cutout cutout;
        cutout.id = "cut" + std::to_string(m_project.cutouts.size() + 1);
        const Point begin{(static_cast<double>(x) + 0.5) * panel.width / 256,
                               (static_cast<double>(y) + 0.5) * panel.height / 256};
        addSeed(cutout, toPart(begin, 100));
        for (std::size_t n = 0; n < form % 4 && !cutout.seeds.empty(); ++n) {
            const std::vector<Point> face = facePolygon(m_project, cutout.seeds.back());
            addSeed(cutout, across(face, n % 2 == 0 ? first : second, oneOf(kHops, form / 4)));
        }
        if (cutout.seeds.empty()) return;
        m_project.cutouts.push_back(cutout);
        if (bore >= 128) boreCorner(bore);
    }

  private:
    void addSeed(Cutout& cutout, Point seed) {
        const auto face = faceAt(m_project, seed);
        if (face && m_taken.insert(*face).second) cutout.seeds.push_back(seed);
    }
    void boreCorner(std::size_t byte) {
        const auto plain = plainLayout(m_project);
        if (!plain || plain->cutouts.back().corners.empty()) return;
        const auto& corners = plain->cutouts.back().corners;
        const PlainCorner& corner = corners[byte / 8 % corners.size()];
        m_project.cutouts.back().corners.push_back({m_project.lines[corner.first].id,
                                                    m_project.lines[corner.second].id, oneOf(kBores, byte), ""});
    }

    Project& m_project;
    std::set<std::string> m_taken;
};

}  // namespace

std::optional<Project> layoutFromBytes(std::span<const std::uint8_t> bytes) {
    ByteReader reader(bytes);
    Project project;
    const Counts counts = sayPanelAndTools(project, reader);
    SpeltLines lines(project);
    for (std::size_t i = 0; i < counts.lines; ++i) lines.add(reader);
    SpeltCutouts cutouts(project);
    for (std::size_t i = 0; i < counts.cutouts; ++i) cutouts.add(reader);
    if (project.cutouts.empty()) return std::nullopt;
    return project;
}

}  // namespace kerfwall::oracle
