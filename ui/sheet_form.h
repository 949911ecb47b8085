// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <functional>
#include <vector>

#include "ui/form_row.h"

class QGridLayout;
class QLabel;

namespace kerfwall {

class LengthField;
class Session;

/// A part of the project to be filled in, laid on the job card. Each entry is a step of its own; what cannot be taken is
/// told under its field.
class SheetForm : public QFrame {
    Q_OBJECT

public:
    /// Part: stands within another form, without a button to end it; its title "" for none.
    enum class Kind { Whole, Part };

    SheetForm(const QString& title, Session& session, QWidget* parent = nullptr, Kind kind = Kind::Whole);

    using LengthRow = kerfwall::LengthRow;
    using ChoiceRow = kerfwall::ChoiceRow;

    void addLength(const LengthRow& row, const RowShown& isShown = {});
    void addChoice(const ChoiceRow& row, const RowShown& isShown = {});
    void addText(const TextRow& row, const RowShown& isShown = {});
    void addList(const ListRow& row, const RowShown& isShown = {});
    /// A heading for the rows that follow.
    void addHeading(const QString& title);
    void focusFirst();
    /// Shows what the project has now.
    void refresh();

Q_SIGNALS:
    void closeAsked();

private:
    struct Row {
        QLabel* label;
        QWidget* field;
        QLabel* trouble;  // under the field; hidden while there is none
        RowShown isShown;
        std::function<void(const Project&)> refresh;
    };
    QLabel* lay(const FormRow& row, QWidget* field, const RowShown& isShown, std::function<void(const Project&)> refresh,
                bool isWide = false);
    void addTypedText(const TextRow& row, const RowShown& isShown);
    void addOfferedText(const TextRow& row, const RowShown& isShown);
    void addLines(const TextRow& row, const RowShown& isShown);
    void enter(const LengthRow& row, std::optional<double> value, QLabel* trouble);
    /// Enters what was typed, or tells why not.
    bool isTaken(const TextRow& row, const QString& text, QLabel* trouble);
    bool isTaken(const ListRow& row, const QString& text, QLabel* trouble);

    Session& m_session;
    QGridLayout* m_grid;
    std::vector<Row> m_rows;
};

/// Size, thickness, kerf depth, material and true edges of the panel; the sheet's title and notes.
[[nodiscard]] SheetForm* makePanelForm(Session& session, QWidget* parent);

/// How the finished template steers the cutter, and the trimming bit.
[[nodiscard]] SheetForm* makeUseForm(Session& session, QWidget* parent);

/// The workpiece the template lies on: a rectangle's size and place, its thickness and grain.
[[nodiscard]] SheetForm* makeWorkpieceForm(Session& session, QWidget* parent);

}  // namespace kerfwall
