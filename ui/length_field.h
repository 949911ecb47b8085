// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>
#include <optional>

#include "core/says/project.h"

namespace kerfwall {

/// An entry field for a length or an angle, on core's own reader: comma and dot are both the decimal sign,
/// fractions and units may follow.
class LengthField : public QLineEdit {
    Q_OBJECT

public:
    enum class Kind { Length, Angle };

    explicit LengthField(QWidget* parent = nullptr);

    void setKind(Kind kind);
    void setUnits(Units units);
    /// What values are taken, mm or degrees; `sentence` tells it to the one who types another.
    void setRange(double low, double high, const QString& sentence);
    /// True: an emptied field is a value of its own ("none").
    void setMayBeEmpty(bool may) { m_mayBeEmpty = may; }

    /// Shows a value, mm or degrees; none: empty. What is being typed is left alone.
    void show(std::optional<double> value);
    /// Shows it even over what is being typed.
    void showAnyway(std::optional<double> value);
    std::optional<double> value() const { return m_value; }
    bool isBeingTyped() const { return m_typing; }
    /// Begins typing with that text instead of what stands there.
    void beginWith(const QString& text);

Q_SIGNALS:
    /// With each key that leaves a value, or nothing, in the field.
    void typed(std::optional<double> value);
    /// Return, or the focus leaves a changed field: this value holds.
    void entered(std::optional<double> value);
    /// What stands there is no value; one sentence. Empty: it is one again.
    void troubled(const QString& sentence);
    void left();  ///< Esc

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    void read(const QString& text);
    void settle();
    void setTrouble(const QString& sentence);
    QString textOf(std::optional<double> value) const;

    Kind m_kind = Kind::Length;
    Units m_units = Units::Millimetres;
    std::optional<double> m_value;
    std::optional<double> m_read;
    bool m_typing = false;
    bool m_mayBeEmpty = false;
    QString m_trouble;
    double m_low;
    double m_high;
    QString m_rangeSentence;
};

}  // namespace kerfwall
