using System.Reflection;
using Loadmark.Storage.Entities;
using Loadmark.Storage.Seals;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;

namespace Loadmark.Storage.Sqlite;

/// <summary>The file, and how connections to it are made.</summary>
internal sealed class DatabaseFile
{
    /// <summary>The name of the file, whatever its folder.</summary>
    public const string FileName = "loadmark.db";

    /// <summary>
    /// How long a change waits for another program's, in milliseconds. SQLite itself waits, in steps of a few milliseconds.
    /// </summary>
    public const int PatienceMilliseconds = 5000;

    /// <summary>What the name of the log ends with, after the database's.</summary>
    public const string WriteAhead = "-wal";

    /// <summary>And that of the memory that programs share while they have it open.</summary>
    public const string Shared = "-shm";

    /// <summary>And that of the journal of a database that has no log.</summary>
    public const string Rollback = "-journal";

    private readonly Assembly? _migrations;
    private readonly PooledDbContextFactory<StorageContext> _contexts;
    private readonly string _connection;

    /// <summary>Names the file; does not touch it.</summary>
    /// <param name="folder">Where the file is, or is to be.</param>
    /// <param name="migrations">Where the migrations are; null for this assembly. Tests bring those of a later program.</param>
    public DatabaseFile(string folder, Assembly? migrations = null)
    {
        Folder = System.IO.Path.GetFullPath(folder);
        Path = System.IO.Path.Combine(Folder, FileName);
        _migrations = migrations;
        _connection = new SqliteConnectionStringBuilder
        {
            DataSource = Path,
            // The file is made by Opening, private to the user. Nothing else makes one, such as when a disk is taken away.
            Mode = SqliteOpenMode.ReadWrite,
            ForeignKeys = true,
            // Seconds. When SQLite has waited, the library is not to begin again.
            DefaultTimeout = 1,
        }.ToString();
        _contexts = new PooledDbContextFactory<StorageContext>(OptionsFor(_connection, migrations));
    }

    /// <summary>What SQLite may put beside a database.</summary>
    public static IReadOnlyList<string> Beside { get; } = [WriteAhead, Shared, Rollback];

    public string Folder { get; }

    /// <summary>
    /// Whether this program has it open. Nothing else may then open and close the files: the system gives up all locks of a program on a
    /// file when the program closes it once (sqlite.org, How To Corrupt An SQLite Database File, 2.2).
    /// </summary>
    public bool IsOpenHere { get; set; }

    public string Path { get; }

    public static DbContextOptions<StorageContext> OptionsFor(string connection, Assembly? migrations = null) =>
        new DbContextOptionsBuilder<StorageContext>()
            .UseSqlite(connection, sqlite => sqlite.MigrationsAssembly(migrations ?? typeof(StorageContext).Assembly))
            .AddInterceptors(new ConnectionSettings(), SealInterceptor.Instance)
            .Options;

    /// <summary>A file of the same schema in another folder.</summary>
    public DatabaseFile In(string folder) => new(folder, _migrations);

    public StorageContext NewContext() => _contexts.CreateDbContext();

    /// <summary>A file that is taken away while it is open would be written on without a word, and be gone at the end.</summary>
    /// <exception cref="FileNotFoundException">The file is not where it was.</exception>
    public void CheckIsThere()
    {
        if (!File.Exists(Path))
            throw new FileNotFoundException("The database is no longer there.", Path);
    }

    /// <summary>
    /// A connection for opening and migrating, not shared with others and without foreign keys: bringing a table to a new shape drops the
    /// old one, which would take along the rows that refer to it.
    /// </summary>
    /// <exception cref="InvalidDataException">The file is a database whose header SQLite does not know.</exception>
    public SqliteConnection NewPlainConnection()
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder(_connection) { ForeignKeys = false, Pooling = false }.ToString());
        connection.Open();

        // Until it is known to be ours and whole, not even what its log holds is written into it.
        connection.KeepsLog(true);
        connection.Run(ConnectionSettings.Text);
        try
        {
            // The first look into the file: its header may be one that SQLite does not know.
            connection.Look("SELECT name FROM sqlite_master LIMIT 1");
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>Lets go of the file.</summary>
    public void Close()
    {
        using var connection = new SqliteConnection(_connection);
        SqliteConnection.ClearPool(connection);
    }
}
