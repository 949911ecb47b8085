// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCheckBox>
#include <QFrame>
#include <vector>

#include "core/says/pattern_layer.h"

namespace kerfwall {

class Session;

/// What the pattern shows, to be left out or taken in. Each is a step of its own.
class PatternChecks : public QFrame {
    Q_OBJECT

public:
    explicit PatternChecks(Session& session, QWidget* parent = nullptr);

private:
    void take(PatternLayer layer, bool shown);
    void refresh();

    struct Check {
        PatternLayer layer;
        QCheckBox* box;
    };
    Session& m_session;
    std::vector<Check> m_checks;
};

}  // namespace kerfwall
