// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/things_mime.h"

#include <QCoreApplication>
#include <QMimeData>

#include "core/says/project_text.h"

namespace kerfwall {
namespace {

const QString kType = QStringLiteral("application/vnd.kerfwall.things+json");

QString text(const char* source) { return QCoreApplication::translate("kerfwall::ThingsMime", source); }

}  // namespace

QMimeData* thingsMime(const Project& snippet) {
    const QByteArray json = QByteArray::fromStdString(writeProject(snippet));
    auto* mime = new QMimeData;
    mime->setData(kType, json);
    mime->setText(QString::fromUtf8(json));
    return mime;
}

std::expected<Project, QString> thingsFrom(const QMimeData* mime) {
    QByteArray json;
    if (mime && mime->hasFormat(kType)) json = mime->data(kType);
    else if (mime && mime->hasText()) json = mime->text().toUtf8();
    if (json.trimmed().isEmpty()) return std::unexpected(text("There is nothing to paste: copy lines, holes, fences or cutouts first."));
    auto project = readProject(std::string_view(json.constData(), static_cast<std::size_t>(json.size())));
    if (!project) return std::unexpected(text("What was copied elsewhere is no part of a template and can't be pasted here."));
    return std::move(*project);
}

}  // namespace kerfwall
