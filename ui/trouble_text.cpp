// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/trouble_text.h"

#include <QCoreApplication>

namespace kerfwall {

QString troubleText(const Solved& solved, const LineId& id) {
    const DrawingTrouble* trouble = troubleOf(solved, id);
    if (!trouble) return {};
    QString sentence = QString::fromStdString(trouble->sentence);
    if (!sentence.isEmpty()) sentence[0] = sentence[0].toUpper();
    return QCoreApplication::translate("kerfwall::TroubleText", "%1 Until then it is left out.").arg(sentence);
}

}  // namespace kerfwall
