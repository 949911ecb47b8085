// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/picked_text.h"

#include <QCoreApplication>
#include <QStringList>

namespace kerfwall {
namespace {

QString text(const char* source) { return QCoreApplication::translate("kerfwall::PickedText", source); }

QString one(const Picked& picked) {
    if (!picked.lines.empty()) return text("line %1").arg(QString::fromStdString(picked.lines.front()));
    if (!picked.cutouts.empty()) return text("cutout %1").arg(QString::fromStdString(picked.cutouts.front()));
    if (!picked.holes.empty()) return text("clamp hole %1").arg(picked.holes.front() + 1);
    if (!picked.fences.empty()) return text("fence %1").arg(picked.fences.front() + 1);
    return text("the workpiece");
}

void addCount(QStringList& parts, std::size_t count, const char* single, const char* several) {
    if (count == 1) parts << text(single);
    else if (count > 1) parts << text(several).arg(count);
}

}  // namespace

QString pickedText(const Picked& picked) {
    if (picked.count() == 1) return one(picked);
    QStringList parts;
    addCount(parts, picked.lines.size(), "1 line", "%1 lines");
    addCount(parts, picked.cutouts.size(), "1 cutout", "%1 cutouts");
    addCount(parts, picked.holes.size(), "1 clamp hole", "%1 clamp holes");
    addCount(parts, picked.fences.size(), "1 fence", "%1 fences");
    if (picked.workpiece) parts << text("the workpiece");
    if (parts.size() < 2) return parts.join(QString());
    const QString last = parts.takeLast();
    return text("%1 and %2").arg(parts.join(QStringLiteral(", ")), last);
}

}  // namespace kerfwall
