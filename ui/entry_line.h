// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <array>

#include "core/says/project.h"
#include "ui/entry_state.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace kerfwall {

class LengthField;

/// The line at the bottom of the sheet: values to type, and a sentence that says what the click will do.
class EntryLine : public QWidget {
    Q_OBJECT

public:
    explicit EntryLine(QWidget* parent = nullptr);

    void show(const EntryState& state, Units units);
    /// Typing that began over the plan goes on in the first field.
    void beginWith(const QString& text);
    bool hasFields() const { return !m_state.fields.empty(); }
    void focusFirstField();

Q_SIGNALS:
    void typed(int field, std::optional<double> value);
    void chose(int field, int option);
    void entered();  ///< Return: what is shown holds
    void settled();  ///< the focus left a field that was typed into
    void left();
    void unitsAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    static constexpr int kMostFields = 4;
    struct Slot {
        QLabel* label = nullptr;
        LengthField* field = nullptr;
        QComboBox* choice = nullptr;
    };
    QWidget* widgetAt(int index) const;
    void keepHeight();
    void makeSlot(int index);
    void showField(int index, Units units, bool sameKind);
    void showSentence();

    EntryState m_state;
    std::array<Slot, kMostFields> m_slots;
    QLabel* m_sentence;
    QPushButton* m_units;
    QString m_trouble;
};

}  // namespace kerfwall
