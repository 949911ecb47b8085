// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>

#include "tests/commands/program.h"
#include "tests/core/says/broken_projects.h"

namespace kerfwall {
namespace {

const QString kFile = QStringLiteral("broken.kerfwall");

// Trouble of drawing: the form is sound, the lines and seeds are not.
std::vector<BrokenProject> brokenDrawings() {
    struct Change {
        const char* name;
        const char* where;
        const char* value;
        const char* pointer;
        const char* says;
    };
    const std::vector<Change> changes{
        {"LineAboveThePanel", "/lines/1/place/distance", "450", "/lines/1", "B"},
        {"LineBelowThePanel", "/lines/0/place/distance", "-1", "/lines/0", "A"},
        {"LineOnAnEdge", "/lines/0/place/distance", "0", "/lines/0", "A"},
        {"LineThroughAPanelCornerOnly", "/lines/0/place",
         R"({"by": "points", "p": [-50, 50], "q": [50, -50]})", "/lines/0", "A"},
        {"LineTurnedOffThePanel", "/lines/2/place",
         R"({"by": "angle", "from": "bottom", "angle": 45, "through": [900, 0]})", "/lines/2", "C"},
        {"LineMirroredOffThePanel", "/lines/3/place", R"({"by": "mirror", "of": "C", "about": "E"})",
         "/lines/", "panel"},
        {"LineThroughACrossingThatIsNone", "/lines/3/place",
         R"({"by": "angle", "from": "left", "angle": 10, "through": {"crossing": ["A", "B"]}})", "/lines/3",
         "D"},
        {"MarksThatMeetInACorner", "/lines/2/place",
         R"({"by": "marks", "a": {"edge": "bottom", "at": 600}, "b": {"edge": "right", "at": 0}})",
         "/lines/2", "C"},
        {"LinesOnOneAnother", "/lines/1/place/distance", "140", "/lines/1", "A"},
        {"LinesOnOneAnotherTheOtherWay", "/lines/1/place",
         R"({"by": "offset", "from": "top", "distance": 260})", "/lines/1", "A"},
        {"SeedOnALine", "/cutouts/0/seeds/0", "[300, 140]", "/cutouts/0/seeds/0", "A"},
        {"SeedOnACrossing", "/cutouts/0/seeds/0", "[200, 140]", "/cutouts/0/seeds/0", ""},
        {"SeedOnAnEdge", "/cutouts/0/seeds/0", "[300, 0]", "/cutouts/0/seeds/0", "edge"},
        {"SeedInAPanelCorner", "/cutouts/0/seeds/0", "[0, 0]", "/cutouts/0/seeds/0", "edge"},
        {"SeedOutsideThePanel", "/cutouts/0/seeds/0", "[700, 200]", "/cutouts/0/seeds/0", "panel"},
        {"SecondSeedOutsideThePanel", "/cutouts/0/seeds", "[[300, 200], [300, 500]]", "/cutouts/0/seeds/1",
         "panel"},
        {"SharedFace", "/cutouts/1", R"({"id": "again", "seeds": [[350, 250]]})", "/cutouts/1", "window"},
        {"CornerOfLinesThatDoNotMeet", "/cutouts/0/corners",
         R"([{"between": ["A", "B"], "bore_radius": 20}])", "/cutouts/0/corners/0", "A"},
        {"CornerOfAnotherCutout", "/cutouts/0",
         R"({"id": "foot", "seeds": [[100, 50]], "corners": [{"between": ["B", "D"], "bore_radius": 20}]})",
         "/cutouts/0/corners/0", "B"},
        {"OnlyAnInwardCorner", "/cutouts/0",
         R"({"id": "step", "seeds": [[300, 200], [100, 200], [300, 300]],
             "corners": [{"between": ["B", "C"], "bore_radius": 20}]})",
         "/cutouts/0/corners/0", "B"},
    };
    std::vector<BrokenProject> broken;
    for (const Change& change : changes) {
        std::string text = soundProjectWith(change.where, change.value);
        if (text.find(R"("about":"E")") != std::string::npos) {
            // A slanting line near the right edge: C lands beyond it.
            auto project = nlohmann::ordered_json::parse(text);
            project["lines"].push_back(nlohmann::ordered_json::parse(
                R"({"id": "E", "place": {"by": "points", "p": [590, 0], "q": [595, 400]}, "cut": false})"));
            text = project.dump();
        }
        broken.push_back({change.name, text, change.pointer, change.says});
    }
    return broken;
}

class BrokenFile : public testing::TestWithParam<BrokenProject> {
  protected:
    const Workbench m_bench;

    void expectRefused(const Answer& answer) {
        EXPECT_EQ(answer.status, 2) << answer.err.constData();
        EXPECT_EQ(answer.out.toStdString(), "");
        EXPECT_TRUE(isOneLine(answer.err)) << answer.err.constData();
        EXPECT_TRUE(answer.err.startsWith("kerfwall: broken.kerfwall: ")) << answer.err.constData();
        EXPECT_TRUE(answer.err.contains(GetParam().pointer.c_str())) << answer.err.constData();
        EXPECT_TRUE(answer.err.contains(GetParam().says.c_str())) << answer.err.constData();
    }
};

// Expected from: the report, version 1: exit status 2, one line on standard error with the file, the
// place in it, what is wrong and what would be right; nothing on standard output.
TEST_P(BrokenFile, GivesTwoAndOneLineThatNamesThePlace) {
    m_bench.write(kFile, GetParam().text);
    expectRefused(m_bench.run({QStringLiteral("report"), kFile}));
}

const auto nameOf = [](const auto& test) { return test.param.name; };

INSTANTIATE_TEST_SUITE_P(Field, BrokenFile, testing::ValuesIn(brokenFields()), nameOf);
INSTANTIATE_TEST_SUITE_P(Text, BrokenFile, testing::ValuesIn(brokenTexts()), nameOf);
INSTANTIATE_TEST_SUITE_P(Drawing, BrokenFile, testing::ValuesIn(brokenDrawings()), nameOf);

class UnreadableFile : public testing::Test {
  protected:
    const Workbench m_bench;

    void expectRefused(const QString& name) {
        for (const char* command : {"check", "report"}) {
            const Answer answer = m_bench.run({QString::fromLatin1(command), name});
            EXPECT_EQ(answer.status, 2);
            EXPECT_EQ(answer.out, QByteArray());
            EXPECT_TRUE(isOneLine(answer.err)) << answer.err.constData();
            EXPECT_TRUE(answer.err.startsWith("kerfwall: " + name.toUtf8() + ": ")) << answer.err.constData();
        }
    }
};

TEST_F(UnreadableFile, ThatIsNotThere) { expectRefused(QStringLiteral("nowhere.kerfwall")); }

TEST_F(UnreadableFile, ThatIsADirectory) {
    QDir(m_bench.path(QString())).mkdir(kFile);
    expectRefused(kFile);
}

// A file that claims a gigabyte without holding one is turned away by its size, not read.
TEST_F(UnreadableFile, ThatClaimsAGigabyte) {
    QFile file(m_bench.path(kFile));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_TRUE(file.resize(qint64{1} << 30));
    expectRefused(kFile);
}

// A device that never ends has no size to go by.
TEST_F(UnreadableFile, ThatNeverEnds) { expectRefused(QStringLiteral("/dev/zero")); }

}  // namespace
}  // namespace kerfwall
