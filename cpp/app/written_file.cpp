// SPDX-License-Identifier: MIT
#include "app/written_file.h"

#include <QSaveFile>

namespace duskrow::app {

using namespace duskrow::domain;

Result<Done> writeFile(const QString& path, const QByteArray& content)
{
    QSaveFile file(path);
    const bool isWritten =
        file.open(QIODevice::WriteOnly) && file.write(content) == content.size() && file.commit();
    if (!isWritten)
        return Error{ErrorCode::FileUnwritable, {path.toStdString()}, file.errorString().toStdString()};
    return Done{};
}

} // namespace duskrow::app
