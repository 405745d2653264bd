using System.Globalization;
using Loadmark.Storage.Disk;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>
/// The copies that the program makes by itself, in a folder beside the database: one on each day of use, and one before whatever takes the
/// place of all that is kept. A file there that the program did not name is nobody's business.
/// </summary>
internal sealed class KeptCopies(DatabaseFile file, TimeProvider clock)
{
    /// <summary>The folder's name.</summary>
    public const string FolderName = "backups";

    private const string Stem = "loadmark-";
    private const string Ending = ".db";
    private const string TimeForm = "yyyyMMdd'T'HHmmss";

    private static readonly Dictionary<CopyReason, string> Words = new()
    {
        [CopyReason.Day] = "day",
        [CopyReason.BeforeUpgrade] = "before-upgrade",
        [CopyReason.BeforeRestore] = "before-restore",
    };

    private string Folder => Path.Combine(file.Folder, FolderName);

    /// <summary>All there are, the last one first. What cannot be looked at is not among them.</summary>
    public List<KeptCopy> List()
    {
        try
        {
            return [.. new DirectoryInfo(Folder).EnumerateFiles($"{Stem}*{Ending}")
                .Select(static found => Parse(found)).OfType<KeptCopy>()
                .OrderByDescending(static copy => copy.Made).ThenByDescending(static copy => copy.File, StringComparer.Ordinal)];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>Copies the database, checks the copy whole, and lets go of those that are too many or too old.</summary>
    /// <returns>The copy's path.</returns>
    /// <exception cref="DamageException">What was copied is not as it was saved; there is no copy then.</exception>
    public string Write(CopyReason reason)
    {
        PrivateFile.MakeFolder(Folder);
        var stem = Path.Combine(
            Folder, string.Create(CultureInfo.InvariantCulture, $"{Stem}{clock.GetUtcNow().ToString(TimeForm)}-{Words[reason]}"));
        var path = $"{stem}{Ending}";
        for (var more = 2; File.Exists(path); more++)
            path = $"{stem}-{more}{Ending}";
        using (var source = file.NewPlainConnection())
            CopyWriter.Write(source, path, overwrite: false, CopyCheck.CheckSeals);
        foreach (var old in CopyRota.Superfluous(List()))
            Forget(old);
        return path;
    }

    /// <summary>Writes the one of today, where there is none yet.</summary>
    /// <returns>Its path; null where there is one, or nothing is kept.</returns>
    public string? WriteToday()
    {
        var today = clock.GetUtcNow().UtcDateTime.Date;
        return !File.Exists(file.Path) || List().Exists(copy => copy.Reason == CopyReason.Day && copy.Made.UtcDateTime.Date == today)
            ? null
            : Write(CopyReason.Day);
    }

    private static void Forget(KeptCopy copy)
    {
        try
        {
            File.Delete(copy.File);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // It goes the next time.
        }
    }

    private static KeptCopy? Parse(FileInfo found)
    {
        var name = found.Name[Stem.Length..^Ending.Length];
        var end = name.IndexOf('-', StringComparison.Ordinal);
        if (end < 0 || !DateTimeOffset.TryParseExact(
                name[..end], TimeForm, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var made))
            return null;
        var words = name[(end + 1)..];
        foreach (var (reason, word) in Words)
        {
            var rest = words.StartsWith(word, StringComparison.Ordinal) ? words[word.Length..] : null;
            if (rest is "" || (rest?[0] == '-' && int.TryParse(rest[1..], NumberStyles.None, CultureInfo.InvariantCulture, out _)))
                return new KeptCopy(found.FullName, made, reason, found.Length);
        }

        return null;
    }
}
