// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/exact_words.h"

#include "tests/ui/window/hand_on_sheet.h"
#include "ui/card_texts.h"

namespace kerfwall {
namespace {

// Expected from: the promise: never less than what may be. 0.2121 is told as 0.22, 0.30 as it is; in inches 0.00835 and
// 0.0118.
TEST(ExactWords, AreRoundedUp) {
    const Exactness size{{0.3, 0.212132}, ToleranceClass::Medium};
    EXPECT_EQ(exactWords(size, Units::Millimetres), QStringLiteral("± 0.22, at worst 0.3 (ISO 2768-1 m)"));
    EXPECT_EQ(exactWords(size, Units::Inches), QStringLiteral("± 0.009 in, at worst 0.012 in (ISO 2768-1 m)"));
    EXPECT_EQ(exactWords({{9, 8}, {}}, Units::Millimetres), QStringLiteral("± 8, at worst 9 (no class of ISO 2768-1)"));
}

// Expected from: GUM 4.3.7: 2 x 0.212132 / sqrt 3 = 0.24495, rounded up 0.25; ISO 2768-1: 56 mm may be off by 0.3 in class m.
TEST(ExactWords, AtLengthOnceChosen) {
    EXPECT_EQ(exactSentences({{0.3, 0.212132}, ToleranceClass::Medium}, 56, Units::Millimetres),
              QStringLiteral("Likely within ± 0.22, from all the settings it depends on; about 95 of 100 within ± 0.25, none beyond ± 0.3. "
                             "Class m of ISO 2768-1 allows ± 0.3 here."));
    EXPECT_FALSE(exactSentences({{9, 8}, {}}, 56, Units::Millimetres).contains(QStringLiteral("Class")));
}

// Expected from: the promise: the angle farthest off speaks, and no class where one angle keeps none.
TEST(ExactWords, OfAllAnglesTheFarthestOff) {
    CutoutExactness cutout;
    EXPECT_TRUE(angleExactWords(cutout).isEmpty());
    cutout.angles = {Exactness{{0.02, 0.015}, ToleranceClass::Fine}, std::nullopt, Exactness{{0.4, 0.3}, ToleranceClass::Coarse}};
    EXPECT_EQ(angleExactWords(cutout), QStringLiteral("angles ± 0.3°, at worst 0.4° (ISO 2768-1 c)"));
    cutout.angles.push_back(Exactness{{5, 4}, {}});
    EXPECT_EQ(angleExactWords(cutout), QStringLiteral("angles ± 4°, at worst 5° (no class of ISO 2768-1)"));
}

using SizesOnCard = HandOnSheet;

// Expected from: pencil: A and B at one rip fence, each within 0.15.
TEST_F(SizesOnCard, SayHowExactTheyComeOut) {
    layWindow();
    const Session& session = m_window.session();
    const auto rows = sizeTexts(session.project(), session.solved(), session.order());
    const auto row = std::ranges::find_if(rows, [](const CardRow::Text& each) { return each.mark == QStringLiteral("56"); });
    ASSERT_NE(row, rows.end());
    EXPECT_EQ(row->text, QStringLiteral("± 0.22, at worst 0.3 (ISO 2768-1 m)"));
    EXPECT_EQ(rows.front().text, QStringLiteral("angles ± 0.01°, at worst 0.01° (ISO 2768-1 f)"));
}

}  // namespace
}  // namespace kerfwall
