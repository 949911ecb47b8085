// SPDX-License-Identifier: GPL-3.0-or-later
// Every way of laying and of changing x every kind of thing it can be done to, and the test that does it by real mouse and
// key events and looks at the project that results.
// The list is whole because it goes through what the window offers: the tools of the strip (pick, lay, mark waste, bore, clamp
// hole, fence, move the cut; the measuring tool changes nothing), each by mouse, by keys and by the entry line; all that the laying
// tool holds on to; the three shapes wanted and their places; the offers of the first sheet; the ways the Edit menu has for what is
// picked; the forms of the Panel and Bench menus; the sizes on the drawing; the remedies by kind. A row that is not there makes no
// sense: a bore, a panel, a bench and a use lie in one place and are one; a workpiece is one and is not doubled; sizes on the
// drawing are sizes of lines; a cut of the side views is no part of the project and is not undone.
#include <gtest/gtest.h>

#include <set>
#include <string>

namespace kerfwall {
namespace {

struct Row {
    const char* way;
    const char* kind;
    const char* test;  ///< suite and name; of a parameterised one all but its parameter
};

constexpr Row kLaying[] = {
    {"dragged", "line", "LayingByHand.TheLineAndItsAnswersAreThereWhileTheDragGoesOn"},
    {"dragged", "several lines", "Rectangle.FourDragsAndAClickGiveTheProjectFieldByField"},
    {"dragged", "mark-only line", "LayingByHand.MarksAreLaidByAChoiceOnEitherFace"},
    {"dragged", "bore", "BoringByHand.DraggingAwayFromTheCornerBoresIt"},
    {"dragged", "clamp hole", "ClampingByHand.ADragFromTheEdgeDrillsAsDeepAsItGoes"},
    {"dragged", "fence", "FencingByHand.ADragFromALineSetsItsFace"},
    {"dragged", "stop", "FencingByHand.AStopIsDraggedToItsDistanceAndSlidAlong"},
    {"dragged among many lines", "bore", "LargeByHand.ABoreIsDragged"},
    {"dragged among many lines", "clamp hole", "LargeByHand.AClampHoleIsPlacedDrilledDeeperAndStaysPicked"},
    {"dragged among many lines", "fence", "LargeByHand.AFenceIsPlacedMovedAndStaysPicked"},
    {"two clicks", "line", "LayingByHand.TwoClicksLayALineAsADragDoes"},
    {"one click", "cutout", "WasteByHand.TheHoverSaysWhatAClickWouldMark"},
    {"one click", "face of a cutout", "WasteByHand.TheHoverSaysWhatAFaceJoinsAndThatItOpens"},
    {"Shift and a click", "face of a cutout", "ChangingByHand.ShiftAddsAFaceToThePickedCutout"},
    {"one click", "bore", "ChangingByHand.ACornerIsBoredByAClickAndATypedRadius"},
    {"one click", "clamp hole", "ClampingByHand.AClickPlacesAndASecondClickPicksTheSameHole"},
    {"one click", "fence", "FencingByHand.AClickOnAnEdgeFixesAFenceBesideIt"},
    {"one click", "stop", "FencingByHand.AStopIsFixedByAClick"},
    {"chosen from the bench", "clamp hole", "ClampingByHand.TheHolesOfTheBenchsClampsAreOffered"},
    {"distance typed while dragging", "line", "LayingByHand.DigitsTypedWhileDraggingSetTheDistance"},
    {"angle typed while dragging", "line", "LayingByHand.AnAngleTypedWhileDraggingTurnsTheLine"},
    {"both typed while dragging", "line", "LayingByHand.TabGoesRoundTheFieldsWhileTheDragGoesOn"},
    {"typed between two clicks", "line", "LayingByHand.ADistanceTypedBetweenTwoClicksGoesWithTheSecond"},
    {"typed while dragging", "fence", "FencingByHand.DigitsWhileDraggingAreItsDistance"},
    {"typed just after", "line", "LayingByHand.DigitsTypedAfterTheDragGoToTheLineJustLaidUntilEnter"},
    {"typed just after", "line end", "LayingByHand.TabBetweenTheNumbersOfTheLineJustLaidKeepsBoth"},
    {"typed just after", "clamp hole", "ClampingByHand.AllFourNumbersAreTyped"},
    {"typed just after", "fence", "FencingByHand.ItsPlaceIsTyped"},
    {"typed just after", "bore", "BoringByHand.DigitsOverTheSheetAreTheRadius"},
    {"typed alone from an edge", "line", "LayingByHand.ALineIsLaidByTypingAlone"},
    {"typed alone from a line", "line", "LayingByHand.ALineIsTypedFromAnotherLine"},
    {"typed alone with an angle", "line", "LayingByHand.AnAngleIsTypedAlone"},
    {"typed alone in inches", "line", "LayingByHand.InchesAndFractionsAreRead"},
    {"typed alone", "mark-only line", "MarksByHand.OneIsLaidByTypingAlone"},
    {"typed alone", "fence", "FencingByHand.AFenceIsFixedByTypingAlone"},
    {"typed alone", "stop", "FencingByHand.AStopIsFixedByTypingAlone"},
    {"keyboard alone", "line", "LayingByHand.TheKeyboardAloneLaysALine"},
    {"keyboard alone", "mark-only line", "MarksByHand.OneIsLaidByKeysAlone"},
    {"keyboard alone", "cutout", "WasteByHand.TheKeyboardAloneMarksWasteAndKeepsItAgain"},
    {"keyboard alone", "bore", "BoringByHand.TabAndPlusAndArrowsBoreByKeyboardAlone"},
    {"keyboard alone", "clamp hole", "ClampingByHand.TheKeyboardAlonePlacesSlidesAndDrills"},
    {"keyboard alone", "fence", "FencingByHand.TheKeyboardAloneFixesMovesAndTakesAway"},
    {"keyboard alone", "stop", "FencingByHand.AStopIsFixedAndSlidByKeysAlone"},
    {"snapped to edge marks and parallel", "line", "SnappingByHand.WholeStepsAndParallel"},
    {"snapped square", "line", "SnappingByHand.SquareToTheReferenceEdge"},
    {"snapped to a slanting line", "line", "SnappingByHand.ParallelAndSquareToASlantingLine"},
    {"snapped to whole and half degrees", "line", "SnappingByHand.WholeAndHalfDegrees"},
    {"snapped to ends and middles", "line", "SnappingByHand.TheEndOfALineAndTheMiddleOfAnEdge"},
    {"snapped to a crossing at its start", "line", "SnappingByHand.ThroughTheCrossingItWasDraggedFrom"},
    {"snapped to a crossing", "line", "SnappingByHand.ALineDrawnToACrossingMovesAlongWithIt"},
    {"snapped to a point already laid", "line", "SnappingByHand.ThroughAPointOfAnotherLine"},
    {"snapped to a corner of the panel", "line", "SnappingByHand.FromACornerOfThePanel"},
    {"snapped tangent to a bore", "line", "SnappingByHand.TangentToABore"},
    {"snapped to a mirror position", "line", "SnappingByHand.MirrorOfALineAboutACentreLine"},
    {"snapped to a mirror position about a line", "line", "SnappingByHand.MirrorOfALineAboutTheOneThatIsPicked"},
    {"snapped clear of the work's sawn corner", "line", "SnappingByHand.ClearOfTheWorksSawnCornerByTheMarginInTheEntryLine"},
    {"snapped to a bore at hand", "bore", "BoringByHand.ABoreAtHandHoldsOnUnlessAltIsDown"},
    {"snapping suspended", "line", "SnappingByHand.AltSuspendsAll"},
    {"from the size wanted: a window", "cutout", "WantedOnSheet.FromAnEmptySheetToTheCrateEndByMouseAndKeys"},
    {"from the size wanted: placed on the panel", "cutout", "WantedOnSheet.ThePlaceIsCountedFromTheEdges"},
    {"from the size wanted: placed on the work", "cutout", "WantedOnSheet.ThePlaceIsCountedFromTheWorksEdges"},
    {"from the size wanted: legs", "cutout", "WantedOnSheet.ALegFrameComesOutAsTheBenchLeg"},
    {"from the size wanted: legs on the work", "cutout", "WantedOnSheet.LegsOnTheWorkStandOnItsLowerEdge"},
    {"from the size wanted: corners pasted", "cutout", "WantedOnSheet.APastedListComesOutAsThePennant"},
    {"from the size wanted: corners typed", "cutout", "WantedOnSheet.EachBadLineIsToldUntilItIsMended"},
    {"from the size wanted: corners clicked", "cutout", "WantedOnSheet.CornersAreClickedOnThePlan"},
    {"from the size wanted: corners by keys", "cutout", "WantedOnSheet.CornersAreClickedByKeysToo"},
    {"from the size wanted: work by its size", "workpiece", "WantedOnSheet.WorkThatIsNotDrawnYetIsSaidByItsSize"},
    {"from the size wanted: other tools", "use", "WantedOnSheet.OffersOtherToolsOfTheBenchBeforeItBores"},
    {"from the size wanted: smallest blank", "panel", "WantedOnSheet.APanelTooSmallIsExchangedForABlank"},
    {"from the size wanted: out of the rack", "panel", "WantedOnSheet.TheRacksPanelIsTaken"},
    {"offered by the first sheet", "panel", "FirstOnSheet.APanelOfTheRackIsTaken"},
    {"offered by the first sheet, by keys", "panel", "FirstOnSheet.ByKeysAlone"},
    {"offered by the first sheet", "sample", "FirstOnSheet.ASampleOpensAsNeverSaved"},
    {"offered by the first sheet", "template of the shelf", "FirstOnSheet.TheShelfShowsTitleAndSize"},
    {"on its form", "workpiece", "WorkpieceByHand.IsFilledInOnTheCard"},
    {"on the bench's form", "saw", "BenchOnSheet.ASlidingMitreSawIsAddedWithItsFields"},
    {"on the bench's form", "clamp", "BenchOnSheet.ClampsAreAddedSetAndTakenAway"},
    {"left in hand", "line", "LayingByHand.EscapeLeavesTheLine"},
    {"left in hand", "bore", "BoringByHand.ABoreWiderThanItsWallsIsSaidToBe"},
    {"left in hand", "fence", "FencingByHand.EscapeLeavesAFenceInHand"},
    {"before it is right", "line", "Unsolved.ALineDraggedOntoAnotherStaysAndSaysSoThere"},
};

constexpr Row kChanging[] = {
    {"dragged", "line", "ChangingByHand.DraggingALineIsOneStepThatUndoTakesBack"},
    {"dragged", "line end", "MovingByHand.ALinesEndIsDraggedAndTheLineTurns"},
    {"dragged", "several lines", "MovingByHand.SeveralLinesAreDraggedTogetherAsOneStep"},
    {"dragged", "mark-only line", "MarksByHand.OneIsDraggedNudgedAndTyped"},
    {"dragged", "line in trouble", "Unsolved.ALineTypedOffThePanelIsShownBesideItAndDraggedBack"},
    {"dragged", "cutout", "MovingByHand.ACutoutIsDraggedWithItsWalls"},
    {"dragged", "bore", "BoringByHand.DraggingTheArcOfABoredCornerIsOneStepAndEscapePutsItBack"},
    {"dragged", "clamp hole", "ClampingByHand.TheHoleIsDraggedAlongTheEdgeAndRoundToAnother"},
    {"dragged by Pick", "clamp hole", "ChangingByHand.AClampHoleIsPlacedDraggedAndTyped"},
    {"dragged", "clamp hole's depth", "ClampingByHand.ThePointIsDraggedForTheDepthWithTheWoodLeftShown"},
    {"dragged", "fence", "MovingByHand.AFenceIsDraggedAlongAndAcross"},
    {"dragged", "fence's end", "FencingByHand.ItsFaceAndEndsAreDragged"},
    {"dragged", "stop", "StopsByHand.OneIsDraggedNudgedAndTyped"},
    {"dragged", "workpiece", "WorkpieceByHand.IsDraggedNudgedTurnedAndTakenAway"},
    {"dragged", "lines, holes and fences", "MovingByHand.LinesHolesAndFencesAreDraggedTogether"},
    {"dragged", "cut", "SideViews.TheToolDragsTheLineItCatches"},
    {"dragged by its handle", "cut", "SideViews.TheHandlesAtTheRimMoveEachItsLine"},
    {"clicked elsewhere", "cut", "SideViews.AClickElsewhereCutsBothWaysThroughThePlace"},
    {"put back", "line", "ChangingByHand.EscapePutsADraggedLineBack"},
    {"put back", "cutout", "MovingByHand.EscapePutsADraggedCutoutBack"},
    {"put back", "clamp hole", "ClampingByHand.EscapePutsADraggedHoleBack"},
    {"put back", "cut", "SideViews.EscapePutsADraggedCutBack"},
    {"nudged", "line", "ChangingByHand.ArrowsNudgeTheLineThatTabPicked"},
    {"nudged", "several lines", "MovingByHand.ArrowsNudgeEachKind"},
    {"nudged", "mark-only line", "MarksByHand.OneIsDraggedNudgedAndTyped"},
    {"nudged", "cutout", "MovingByHand.ArrowsNudgeEachKind"},
    {"nudged", "bore", "BoringByHand.TabAndPlusAndArrowsBoreByKeyboardAlone"},
    {"nudged", "clamp hole", "MovingByHand.ArrowsNudgeEachKind"},
    {"nudged", "fence", "MovingByHand.ArrowsNudgeEachKind"},
    {"nudged", "stop", "StopsByHand.OneIsDraggedNudgedAndTyped"},
    {"nudged", "workpiece", "WorkpieceByHand.IsDraggedNudgedTurnedAndTakenAway"},
    {"nudged", "cut", "SideViews.BothCutsAreTypedAndNudged"},
    {"nudged in its side view", "cut", "SideViews.ArrowKeysInASideViewMoveItsCut"},
    {"nudged in inches", "line and fence", "MovingByHand.InInchesANudgeIsASixteenthAndNearerAThirtySecond"},
    {"typed in the entry line", "line", "ChangingByHand.APickedLineTakesATypedDistance"},
    {"typed in the entry line", "line end", "MovingByHand.ALinesEndsAreTyped"},
    {"typed in the entry line", "mark-only line", "MarksByHand.OneIsDraggedNudgedAndTyped"},
    {"typed in the entry line", "line in trouble", "Unsolved.ALineUnderAnotherIsPickedByTabAndTypedAway"},
    {"typed in the entry line", "bore", "BoringByHand.TheRadiusIsTypedAndNothingButNoughtLeavesItToTheBit"},
    {"typed in the entry line", "clamp hole", "ClampingByHand.AllFourNumbersAreTyped"},
    {"typed in the entry line", "fence", "FencingByHand.PickedByPickItTakesNumbersAndItsKindAsWell"},
    {"typed in the entry line", "stop", "StopsByHand.OneIsDraggedNudgedAndTyped"},
    {"typed in the entry line", "cut", "SideViews.BothCutsAreTypedAndNudged"},
    {"moved by numbers", "line, clamp hole and fence", "MovingByHand.EachKindIsMovedByNumbers"},
    {"moved by numbers", "several lines", "MovingByHand.SeveralLinesAreMovedByNumbers"},
    {"moved by numbers", "cutout", "MovingByHand.EachKindIsMovedByNumbers"},
    {"moved by numbers", "workpiece", "WorkpieceByHand.IsMirroredAndPastedElsewhere"},
    {"on its form: from what, how far", "line", "LineOnTheForm.ShowsFromWhatAndHowFarAndTakesBoth"},
    {"on its form: way of laying", "line", "LineOnTheForm.EveryWayOfLayingKeepsTheLineWhereItIs"},
    {"on its form: angle", "line", "LineOnTheForm.AnAngleKeepsItsPointAndAPointItsAngle"},
    {"on its form: crossing", "line", "LineOnTheForm.ThroughACrossingItMovesAlong"},
    {"on its form: two points", "line", "LineOnTheForm.TwoPointsAreTyped"},
    {"on its form: edge marks", "line end", "LineOnTheForm.EdgeMarksAreChosenAndTyped"},
    {"on its form: mirror image", "line", "LineOnTheForm.AMirrorImageTakesAnotherLineAndAnotherAxis"},
    {"on its form: cut or mark, face, extent, saw", "mark-only line", "LineOnTheForm.CutOrMarkFaceExtentAndSawAreChosen"},
    {"on its form: name", "line", "LineOnTheForm.ANameIsTypedAndAnothersIsRefusedInASentence"},
    {"on its form", "fence", "FencingByHand.ItsSizeSideAndFaceAreFilledInOnTheCard"},
    {"on its form", "stop", "StopsByHand.OneIsFilledInOnTheCard"},
    {"on its form", "workpiece", "WorkpieceByHand.IsFilledInOnTheCard"},
    {"on its form", "panel", "ChangingByHand.PanelKerfDepthAndToolsAreFilledInOnTheSheet"},
    {"on its form: material and notes", "panel", "PanelOnSheet.MaterialAndNotes"},
    {"on its form: rip fence", "bench", "BenchOnSheet.EveryFieldOfARipFence"},
    {"on its form: sled", "bench", "BenchOnSheet.EveryFieldOfASled"},
    {"on its form: mitre gauge", "bench", "BenchOnSheet.EveryFieldOfAMitreGauge"},
    {"on its form: guide rail", "bench", "BenchOnSheet.EveryFieldOfAGuideRail"},
    {"on its form: trimming bit", "bench", "BenchOnSheet.TheTrimmingBitAndItsFields"},
    {"on its form: what is at hand", "bench", "BenchOnSheet.DrillsBitsAndBushes"},
    {"on its form: kept and taken", "bench", "BenchOnSheet.ABenchIsKeptForNewTemplates"},
    {"on its form", "use", "UseOnSheet.TheWholeUse"},
    {"its base changed", "what was laid from it", "LineOnTheForm.WhatWasLaidFromAPanelEdgeOrALineMovesWithIt"},
    {"a line laid across", "cutout", "ChangingByHand.ALineLaidAcrossTheWasteKeepsBothHalves"},
    {"a line moved over it", "cutout", "ChangingByHand.ACutoutThatALineSqueezesOutIsToldAndUndoBringsItBack"},
    {"size set in place", "line from a line", "SizesByHand.AClickedSizeIsTypedAndTheLineLaidLaterMoves"},
    {"size set in place", "line from an edge", "SizesByHand.ASizeFromAnEdgeMovesTheLine"},
    {"size set in place by keys", "line", "SizesByHand.TheKeyboardGoesFromSizeToSizeOfThePickedLine"},
    {"size set in place in inches", "line", "SizesByHand.InInchesAFractionIsTyped"},
    {"turned", "line", "TurningByHand.ALineTurnsAboutItsMiddleByATypedAngle"},
    {"turned", "several lines", "TurningByHand.SeveralLinesTurnAboutAClickedPlace"},
    {"turned", "mark-only line", "MarksByHand.OneTurns"},
    {"turned", "cutout", "TurningByHand.ACutoutTurnsWithItsWallsAndKeepsItsArea"},
    {"turned", "clamp hole and fence", "TurningByHand.AHoleAndAFenceTurnByQuartersOnly"},
    {"turned", "stop", "StopsByHand.OneTurns"},
    {"turned", "workpiece", "WorkpieceByHand.IsDraggedNudgedTurnedAndTakenAway"},
    {"mirrored", "line", "MirroringByHand.ALineGetsACopyThatFollows"},
    {"mirrored", "several lines", "MirroringByHand.SeveralLinesAreTurnedOverForGood"},
    {"mirrored", "mark-only line", "MarksByHand.OneIsMirrored"},
    {"mirrored", "cutout", "MirroringByHand.ACutoutIsMirroredAboutAClickedLine"},
    {"mirrored", "clamp hole and fence", "MirroringByHand.AHoleAndAFenceGetCopiesOfTheirOwn"},
    {"mirrored", "stop", "StopsByHand.OneIsMirrored"},
    {"mirrored", "workpiece", "WorkpieceByHand.IsMirroredAndPastedElsewhere"},
    {"copied at a distance", "line", "CopyingByHand.ALineIsRepeatedAtADistance"},
    {"copied at a distance", "several lines", "CopyingByHand.SeveralThingsAreCopiedTogether"},
    {"copied at a distance", "mark-only line", "MarksByHand.OneIsCopiedAndDoubled"},
    {"copied at a distance", "cutout", "CopyingByHand.ACutoutIsCopiedWithItsWalls"},
    {"copied at a distance", "clamp hole and fence", "CopyingByHand.AHoleAndAFenceAreCopiedAtADistance"},
    {"copied at a distance", "stop", "StopsByHand.OneIsCopiedAndDoubled"},
    {"copied and pasted", "line", "ClipboardByHand.ALineIsPastedAStepAsideWhileItsPlaceIsTaken"},
    {"copied to another window", "cutout, clamp hole and fence", "ClipboardByHand.AnotherWindowTakesItWhereItWas"},
    {"copied as text", "line", "ClipboardByHand.TheTextAloneIsEnoughAndOtherTextIsToldOff"},
    {"cut and pasted", "line", "ClipboardByHand.ALineIsCutAndPasted"},
    {"cut and pasted", "several lines", "ClipboardByHand.SeveralLinesAreCutAndComeBackWhereTheyWere"},
    {"cut and pasted", "mark-only line", "MarksByHand.OneIsCutAndPasted"},
    {"cut and pasted", "cutout", "ClipboardByHand.ACutoutIsCutWithItsWallsAndPastedWithThem"},
    {"cut and pasted", "clamp hole and fence", "ClipboardByHand.AHoleAndAFenceAreCutAndPasted"},
    {"cut and pasted", "stop", "StopsByHand.OneIsCutAndPasted"},
    {"cut and pasted", "workpiece", "WorkpieceByHand.IsMirroredAndPastedElsewhere"},
    {"doubled", "line and several lines", "ClipboardByHand.LinesAreDoubledBesideThemselves"},
    {"doubled", "mark-only line", "MarksByHand.OneIsCopiedAndDoubled"},
    {"doubled", "clamp hole and fence", "ClipboardByHand.AHoleAndAFenceAreDoubledBesideThemselves"},
    {"doubled", "cutout", "ClipboardByHand.ACutoutIsDoubledBesideItself"},
    {"doubled", "stop", "StopsByHand.OneIsCopiedAndDoubled"},
    {"taken away", "line", "ChangingByHand.TakingALineAwayOpensTheCutout"},
    {"taken away", "several lines, cutout, clamp hole, fence", "PickingByHand.DeleteTakesEachKindAway"},
    {"taken away", "everything", "PickingByHand.ControlAPicksEverythingAndDeleteTakesItInOneStep"},
    {"taken away", "mark-only line", "MarksByHand.OneIsTakenAwayUndoneAndDoneAgain"},
    {"taken away", "line in trouble", "Unsolved.ALineThatAPanelChangeLeavesOutsideStaysAndIsTakenAway"},
    {"taken away by a second click", "cutout", "ChangingByHand.ASecondClickUnmarksTheWaste"},
    {"taken away by dragging", "bore", "BoringByHand.DraggedBackUnderTheBitTheCornerIsLeftToIt"},
    {"taken away", "stop", "StopsByHand.OneIsTakenAwayUndoneAndDoneAgain"},
    {"taken away", "workpiece", "WorkpieceByHand.IsDraggedNudgedTurnedAndTakenAway"},
    {"taken away", "saw", "BenchOnSheet.ASawIsTakenAway"},
    {"undone and done again", "line", "ChangingByHand.DraggingALineIsOneStepThatUndoTakesBack"},
    {"undone and done again", "line end", "MovingByHand.ALinesEndIsDraggedAndTheLineTurns"},
    {"undone and done again", "lines, clamp hole, fence, cutout", "MovingByHand.EachKindIsUndoneAndDoneAgain"},
    {"undone and done again", "mark-only line", "MarksByHand.OneIsTakenAwayUndoneAndDoneAgain"},
    {"undone and done again", "stop", "StopsByHand.OneIsTakenAwayUndoneAndDoneAgain"},
    {"undone and done again", "bore, panel, use, bench, workpiece", "ChangingByHand.PanelUseBenchWorkpieceAndBoreAreUndoneAndDoneAgain"},
    {"remedy: stopped kerf", "line", "FindingRows.AStoppedKerfIsOneStep"},
    {"remedy: narrower kerf", "line", "FindingRows.ANarrowerKerfIsOneStep"},
    {"remedy: moved", "line", "FindingRows.AMovedLineIsOneStep"},
    {"remedy: bored", "bore", "FindingRows.ABoreIsOneStep"},
    {"remedy: another drill", "bore", "FindingRows.AnotherDrillIsOneStep"},
    {"remedy: moved", "clamp hole", "FindingRows.AMovedHoleIsOneStep"},
    {"remedy: shallower", "clamp hole", "FindingRows.AShallowerHoleIsOneStep"},
    {"remedy: walls moved and bored", "cutout", "FindingRows.MovedWallsAndBoresAreOneStep"},
    {"remedy: another wish", "cutout", "FindingRows.AnotherWishIsOneStep"},
    {"remedy: another bit", "bench", "FindingRows.AnotherBitFromTheBenchIsOneStep"},
    {"remedy: another kerf depth", "panel", "FindingRows.AnotherKerfDepthIsOneStep"},
    {"remedy by keys", "line", "FindingRows.ByKeyboardAlone"},
};

/// The names of all tests of this program, parameterised ones without their parameters.
std::set<std::string> registeredTests() {
    std::set<std::string> names;
    const testing::UnitTest& all = *testing::UnitTest::GetInstance();
    for (int i = 0; i < all.total_test_suite_count(); ++i) {
        const testing::TestSuite& suite = *all.GetTestSuite(i);
        for (int j = 0; j < suite.total_test_count(); ++j) {
            const std::string name = suite.GetTestInfo(j)->name();
            names.insert(std::string(suite.name()) + '.' + name.substr(0, name.find('/')));
        }
    }
    return names;
}

template <std::size_t N>
void expectRegistered(const Row (&rows)[N]) {
    const std::set<std::string> registered = registeredTests();
    std::set<std::string> cells;
    for (const Row& row : rows) {
        EXPECT_TRUE(registered.contains(row.test)) << row.kind << ", " << row.way << ": there is no test " << row.test;
        EXPECT_TRUE(cells.insert(std::string(row.way) + ", " + row.kind).second) << row.kind << ", " << row.way << " is listed twice";
    }
}

TEST(Ways, OfLayingEachKindHaveATest) { expectRegistered(kLaying); }

TEST(Ways, OfChangingEachKindHaveATest) { expectRegistered(kChanging); }

}  // namespace
}  // namespace kerfwall
