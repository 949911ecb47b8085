// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace kerfwall {

class Selection;
class Session;
class SheetForm;

/// The size, kind, side and face of the fence or stop that is picked.
[[nodiscard]] SheetForm* makeFenceForm(Session& session, Selection& selection, QWidget* parent);

}  // namespace kerfwall
