// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QDir>
#include <nlohmann/json.hpp>

#include "tests/commands/program.h"

namespace kerfwall {
namespace {

using nlohmann::json;

const QString kSound = QStringLiteral("sound.kerfwall");
const QString kThin = QStringLiteral("thin.kerfwall");
const QString kBroken = QStringLiteral("broken.kerfwall");

// The papers of the report, version 1.
const QStringList kPapers{QStringLiteral("pattern.pdf"),     QStringLiteral("pattern.svg"),
                          QStringLiteral("setup-sheet.pdf"), QStringLiteral("label.pdf"),
                          QStringLiteral("picture.png"),     QStringLiteral("report.json")};

class Command : public testing::Test {
  protected:
    const Workbench m_bench;

    Command() {
        m_bench.write(kSound, soundProject());
        // Kerfs 16 deep leave a web of 2 in a panel of 18.
        m_bench.write(kThin, soundProjectWith("/kerf_depth", "16"));
        m_bench.write(kBroken, soundProjectWith("/panel/width", "-5"));
    }

    [[nodiscard]] Answer run(std::initializer_list<const char*> arguments) const {
        QStringList list;
        for (const char* argument : arguments) {
            list << QString::fromUtf8(argument);
        }
        return m_bench.run(list);
    }

    static void expectRefused(const Answer& answer, const QByteArray& says) {
        EXPECT_EQ(answer.status, 2);
        EXPECT_EQ(answer.out.toStdString(), "");
        EXPECT_TRUE(isOneLine(answer.err)) << answer.err.constData();
        EXPECT_TRUE(answer.err.startsWith("kerfwall: ")) << answer.err.constData();
        EXPECT_TRUE(answer.err.contains(says)) << answer.err.constData();
    }
};

TEST_F(Command, CheckEndsWithACountAndGivesNought) {
    const Answer done = run({"check", "sound.kerfwall"});
    EXPECT_EQ(done.status, 0) << done.out.constData();
    EXPECT_EQ(done.err.toStdString(), "");
    const QList<QByteArray> lines = done.out.trimmed().split('\n');
    for (const QByteArray& line : lines) {
        EXPECT_TRUE(line.startsWith("sound.kerfwall: ")) << line.constData();
    }
    EXPECT_TRUE(lines.last().contains(QByteArray::number(lines.size() - 1) + " finding"))
        << lines.last().constData();
    EXPECT_TRUE(lines.last().contains(": 0 stop, ")) << lines.last().constData();
}

// Expected from: pencil, 18 - 16 = 2 under the kerfs; web-thin says stop below 3.
TEST_F(Command, CheckGivesOneWhereAFindingSaysStop) {
    const Answer done = run({"check", "thin.kerfwall"});
    EXPECT_EQ(done.status, 1);
    EXPECT_TRUE(done.out.contains("thin.kerfwall: stop web-thin")) << done.out.constData();
}

TEST_F(Command, CheckOfSeveralGivesTheHighestAndCountsEach) {
    const Answer done = run({"check", "thin.kerfwall", "broken.kerfwall", "sound.kerfwall"});
    EXPECT_EQ(done.status, 2);
    EXPECT_TRUE(isOneLine(done.err)) << done.err.constData();
    EXPECT_TRUE(done.err.contains("broken.kerfwall: /panel/width: ")) << done.err.constData();
    EXPECT_EQ(done.out.count(" findings: ") + done.out.count(" finding: "), 2) << done.out.constData();
    EXPECT_TRUE(done.out.contains("\nsound.kerfwall: ")) << done.out.constData();
}

// Expected from: pencil. A lies 140 above the bottom of a panel 400 high and runs along +x: it enters at
// (0, 140), 400 - 140 = 260 from the top-left corner, where the left edge starts.
TEST_F(Command, ReportIsJsonAndNothingElse) {
    const Answer done = run({"report", "sound.kerfwall"});
    EXPECT_EQ(done.status, 0);
    EXPECT_EQ(done.err.toStdString(), "");
    const json report = json::parse(done.out.toStdString());
    EXPECT_EQ(report["format"], "kerfwall-report");
    EXPECT_EQ(report["version"], 1);
    EXPECT_EQ(report["title"], "Stall shelf");
    EXPECT_EQ(report["lines"][0]["from"], json::parse("[0, 140]"));
    EXPECT_EQ(report["lines"][0]["edge_marks"][0]["edge"], "left");
    EXPECT_EQ(report["lines"][0]["edge_marks"][0]["at"], 260);
    EXPECT_NEAR(report["cutouts"][0]["drawn_area"].get<double>(), 200 * 120, 1e-9);
}

TEST_F(Command, ReportGivesOneWhereAFindingSaysStop) {
    const Answer done = run({"report", "thin.kerfwall"});
    EXPECT_EQ(done.status, 1);
    EXPECT_TRUE(json::accept(done.out.toStdString()));
}

TEST_F(Command, SameProjectSameBytes) {
    EXPECT_EQ(run({"report", "sound.kerfwall"}).out, run({"report", "sound.kerfwall"}).out);
}

TEST_F(Command, PublishWritesThePapersWithoutADisplay) {
    const Answer done = run({"publish", "sound.kerfwall", "--to", "new/papers"});
    EXPECT_EQ(done.status, 0) << done.err.constData();
    EXPECT_EQ(done.err.toStdString(), "");
    const QDir papers(m_bench.path(QStringLiteral("new/papers")));
    EXPECT_EQ(papers.entryList(QDir::Files).size(), kPapers.size());
    for (const QString& paper : kPapers) {
        EXPECT_TRUE(papers.exists(paper)) << paper.toStdString();
    }
    EXPECT_EQ(m_bench.read(QStringLiteral("new/papers/report.json")), run({"report", "sound.kerfwall"}).out);
}

TEST_F(Command, PublishTwiceWritesTheSameBytes) {
    ASSERT_EQ(run({"publish", "sound.kerfwall", "--to", "one", "--paper", "letter"}).status, 0);
    ASSERT_EQ(run({"publish", "--paper=letter", "--to=two", "sound.kerfwall"}).status, 0);
    for (const QString& paper : kPapers) {
        EXPECT_TRUE(m_bench.read(QStringLiteral("one/") + paper) ==
                    m_bench.read(QStringLiteral("two/") + paper))
            << paper.toStdString();
        EXPECT_GT(m_bench.read(QStringLiteral("one/") + paper).size(), 0);
    }
}

TEST_F(Command, PublishGivesOneWhereAFindingSaysStop) {
    EXPECT_EQ(run({"publish", "thin.kerfwall", "--to", "papers"}).status, 1);
    EXPECT_TRUE(m_bench.has(QStringLiteral("papers/pattern.pdf")));
}

TEST_F(Command, PublishOfABrokenFileMakesNoDirectory) {
    expectRefused(run({"publish", "broken.kerfwall", "--to", "papers"}), "/panel/width");
    EXPECT_FALSE(m_bench.has(QStringLiteral("papers")));
}

TEST_F(Command, PublishOnUnknownPaperIsRefused) {
    expectRefused(run({"publish", "sound.kerfwall", "--to", "papers", "--paper", "a9"}), "letter");
    EXPECT_FALSE(m_bench.has(QStringLiteral("papers")));
}

TEST_F(Command, PublishBelowAFileGivesThreeAndLeavesTheFile) {
    const Answer done = run({"publish", "sound.kerfwall", "--to", "thin.kerfwall/papers"});
    EXPECT_EQ(done.status, 3);
    EXPECT_EQ(done.out.toStdString(), "");
    EXPECT_TRUE(isOneLine(done.err)) << done.err.constData();
    EXPECT_EQ(m_bench.read(kThin).toStdString(), soundProjectWith("/kerf_depth", "16"));
}

// What stood there before is untouched, although only one of the files cannot be replaced.
TEST_F(Command, PublishOntoADirectoryGivesThreeAndLeavesAllThatWasThere) {
    ASSERT_TRUE(QDir(m_bench.path(QString())).mkpath(QStringLiteral("papers/picture.png")));
    for (const QString& paper : kPapers) {
        if (paper != QStringLiteral("picture.png")) {
            m_bench.write(QStringLiteral("papers/") + paper, "as it was");
        }
    }
    const Answer done = run({"publish", "sound.kerfwall", "--to", "papers"});
    EXPECT_EQ(done.status, 3);
    EXPECT_TRUE(isOneLine(done.err)) << done.err.constData();
    for (const QString& paper : kPapers) {
        if (paper != QStringLiteral("picture.png")) {
            EXPECT_EQ(m_bench.read(QStringLiteral("papers/") + paper), QByteArray("as it was"));
        }
    }
    EXPECT_EQ(QDir(m_bench.path(QStringLiteral("papers")))
                  .entryList(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden)
                  .size(),
              kPapers.size());
}

// /dev/full takes no byte (Linux, full(4)).
TEST_F(Command, AFullDiskGivesThree) {
    for (const char* command : {"check", "report"}) {
        const Answer done = m_bench.run({QString::fromLatin1(command), kSound}, QStringLiteral("/dev/full"));
        EXPECT_EQ(done.status, 3) << command;
        EXPECT_TRUE(isOneLine(done.err)) << done.err.constData();
    }
    EXPECT_EQ(m_bench.run({QStringLiteral("--help")}, QStringLiteral("/dev/full")).status, 3);
}

/// One sentence with the folder's name, 3, and each paper as it was.
static void expectNothingWritten(const Workbench& bench, const Answer& done) {
    EXPECT_EQ(done.status, 3);
    EXPECT_EQ(done.out.toStdString(), "");
    EXPECT_TRUE(isOneLine(done.err)) << done.err.constData();
    EXPECT_TRUE(done.err.contains("papers")) << done.err.constData();
    EXPECT_TRUE(done.err.contains("could not be written")) << done.err.constData();
    for (const QString& paper : kPapers) EXPECT_EQ(bench.read(QStringLiteral("papers/") + paper), QByteArray("as it was"));
    EXPECT_EQ(QDir(bench.path(QStringLiteral("papers"))).entryList(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden).size(),
              kPapers.size());
}

static void layOldPapers(const Workbench& bench) {
    ASSERT_TRUE(QDir(bench.path(QString())).mkpath(QStringLiteral("papers")));
    for (const QString& paper : kPapers) bench.write(QStringLiteral("papers/") + paper, "as it was");
}

// The disk fills up while a paper is written: its size is limited to less than the smallest, and to less than a later one.
TEST_F(Command, PublishOnADiskThatFillsUpGivesThreeAndLeavesAllThatWasThere) {
    layOldPapers(m_bench);
    for (const quint64 bytes : {quint64{0}, quint64{1000}, quint64{16000}}) {
        SCOPED_TRACE(bytes);
        expectNothingWritten(m_bench, m_bench.runOnFullDisk({QStringLiteral("publish"), kSound, QStringLiteral("--to"), QStringLiteral("papers")}, bytes));
    }
}

TEST_F(Command, PublishIntoAReadOnlyFolderGivesThreeAndLeavesAllThatWasThere) {
    layOldPapers(m_bench);
    const QString papers = m_bench.path(QStringLiteral("papers"));
    ASSERT_TRUE(QFile::setPermissions(papers, QFile::ReadOwner | QFile::ExeOwner));
    const Answer done = m_bench.runWithoutRights({QStringLiteral("publish"), kSound, QStringLiteral("--to"), QStringLiteral("papers")});
    QFile::setPermissions(papers, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    expectNothingWritten(m_bench, done);
}

TEST_F(Command, PublishIntoANewFolderOfAReadOnlyOneGivesThree) {
    ASSERT_TRUE(QDir(m_bench.path(QString())).mkpath(QStringLiteral("locked")));
    ASSERT_TRUE(QFile::setPermissions(m_bench.path(QStringLiteral("locked")), QFile::ReadOwner | QFile::ExeOwner));
    const Answer done = m_bench.runWithoutRights({QStringLiteral("publish"), kSound, QStringLiteral("--to"), QStringLiteral("locked/papers")});
    QFile::setPermissions(m_bench.path(QStringLiteral("locked")), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    EXPECT_EQ(done.status, 3);
    EXPECT_TRUE(isOneLine(done.err)) << done.err.constData();
    EXPECT_FALSE(m_bench.has(QStringLiteral("locked/papers")));
}

TEST_F(Command, HelpAndVersionAnswerEverywhere) {
    for (const char* command : {"", "check", "report", "publish", "sound.kerfwall"}) {
        QStringList arguments;
        if (*command != '\0') {
            arguments << QString::fromLatin1(command);
        }
        const Answer help = m_bench.run(arguments + QStringList{QStringLiteral("--help")});
        EXPECT_EQ(help.status, 0) << command;
        EXPECT_EQ(help.err.toStdString(), "");
        EXPECT_TRUE(help.out.contains("publish FILE --to DIR")) << help.out.constData();
        const Answer version = m_bench.run(arguments + QStringList{QStringLiteral("--version")});
        EXPECT_EQ(version.status, 0) << command;
        EXPECT_TRUE(version.out.startsWith("kerfwall ")) << version.out.constData();
        EXPECT_TRUE(isOneLine(version.out));
    }
}

TEST_F(Command, TooLittleOrTooMuchIsRefused) {
    expectRefused(run({"check"}), "at least one");
    expectRefused(run({"report"}), "exactly one");
    expectRefused(run({"report", "sound.kerfwall", "thin.kerfwall"}), "exactly one");
    expectRefused(run({"publish", "sound.kerfwall"}), "--to");
    expectRefused(run({"publish", "--to", "papers"}), "exactly one");
    expectRefused(run({"publish", "sound.kerfwall", "--to"}), "to");
    expectRefused(run({"publish", "sound.kerfwall", "--to", ""}), "--to");
    expectRefused(run({"report", "sound.kerfwall", "--to", "papers"}), "--to");
    expectRefused(run({"check", "sound.kerfwall", "--paper", "a4"}), "--paper");
    expectRefused(run({"check", "sound.kerfwall", "--fast"}), "fast");
    expectRefused(run({"sound.kerfwall", "thin.kerfwall"}), "one project file");
}

TEST_F(Command, TheWindowSaysThatItNeedsADisplay) {
    expectRefused(run({}), "display");
    expectRefused(run({"sound.kerfwall"}), "display");
}

TEST_F(Command, AFileNamedLikeAnOptionIsReadAfterTwoHyphens) {
    m_bench.write(QStringLiteral("--sound"), soundProject());
    EXPECT_EQ(run({"report", "--", "--sound"}).status, 0);
}

}  // namespace
}  // namespace kerfwall
