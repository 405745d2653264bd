using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Loadmark.Storage.Sqlite;

/// <summary>What SQLite forgets between connections.</summary>
internal sealed class ConnectionSettings : DbConnectionInterceptor
{
    /// <summary>A commit returns when it is on the disk, not before: the power may fail right after it.</summary>
    public static readonly string Text = $"PRAGMA busy_timeout = {DatabaseFile.PatienceMilliseconds}; PRAGMA synchronous = FULL;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) =>
        ((SqliteConnection)connection).Run(Text);

    public override Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        ConnectionOpened(connection, eventData);
        return Task.CompletedTask;
    }
}
