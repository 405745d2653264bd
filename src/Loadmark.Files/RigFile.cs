using System.Collections.Immutable;
using System.Globalization;
using System.Security;
using System.Text;
using Loadmark.Files.Errors;
using Loadmark.Files.Texts;

namespace Loadmark.Files;

/// <summary>Loads and saves the text of rig files.</summary>
public static class RigFile
{
    private const string Itself = "rig file";

    private const int MostAttempts = 100;

    /// <summary>How long a pipe that nobody writes to is waited for, where nobody says how long.</summary>
    public static TimeSpan CommonPatience { get; } = TimeSpan.FromSeconds(10);

    /// <summary>How many bytes are read at first from what does not tell its length.</summary>
    private const int FirstRead = 64 * 1024;

    /// <summary>
    /// Saves a text as UTF-8, whole or not at all: it is written to a new file in the same folder, flushed to the disk,
    /// and takes the old one's place in one step. The old file's permissions are kept; a link is followed. What is no ordinary file,
    /// such as a pipe or a device, is never replaced.
    /// </summary>
    /// <param name="path">Where to.</param>
    /// <param name="text">What; may hold a byte order mark.</param>
    /// <param name="overwrite">Whether a file of that name is replaced.</param>
    /// <exception cref="IOException">It cannot be written. The old file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder or the file is write-protected. The old file is as it was.</exception>
    public static void Save(string path, string text, bool overwrite = true)
    {
        ArgumentNullException.ThrowIfNull(text);
        Save(path, Encoding.UTF8.GetBytes(text), overwrite);
    }

    /// <summary>Saves bytes as <see cref="Save(string, string, bool)"/> saves a text.</summary>
    /// <param name="path">Where to.</param>
    /// <param name="bytes">What.</param>
    /// <param name="overwrite">Whether a file of that name is replaced.</param>
    /// <exception cref="IOException">It cannot be written. The old file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder or the file is write-protected. The old file is as it was.</exception>
    public static void Save(string path, byte[] bytes, bool overwrite)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(bytes);
        var target = Path.GetFullPath(path);
        if (File.Exists(target) && File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly))
            throw new UnauthorizedAccessException($"The file '{path}' is write-protected.");
        if (File.Exists(target) && !OrdinaryFile.Is(target))
            throw new IOException($"'{path}' is no ordinary file, but a pipe, a device or the like.");
        if (new FileInfo(target).LinkTarget is not null)
            target = File.ResolveLinkTarget(target, returnFinalTarget: true)!.FullName;

        var temporary = WriteBeside(target, bytes);
        try
        {
            if (!OperatingSystem.IsWindows() && File.Exists(target))
                File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
            File.Move(temporary, target, overwrite);
        }
        catch
        {
            File.Delete(temporary);
            throw;
        }
    }

    /// <summary>Decodes the bytes of a rig file: UTF-8, with or without a byte order mark.</summary>
    /// <param name="bytes">The bytes, as they came over a network or from elsewhere.</param>
    /// <param name="fileName">The name that errors carry.</param>
    /// <param name="errors">What keeps them from being a text; empty when they are one.</param>
    /// <returns>The text without its byte order mark; null when the bytes are none.</returns>
    public static string? Decode(ReadOnlySpan<byte> bytes, string fileName, out ImmutableArray<FileError> errors)
    {
        ArgumentNullException.ThrowIfNull(fileName);
        var found = new ErrorList(fileName);
        var text = bytes.Length > RigFileReader.MostBytes ? null : RigBytes.Decode(bytes, found);
        if (text is null && !found.Any)
            found.Add(null, TooLarge());
        errors = found.ToArray();
        return text;
    }

    /// <summary>What is wrong with a file that is too large.</summary>
    /// <param name="what">What it should be: "rig file".</param>
    /// <param name="most">The most bytes it may have.</param>
    internal static string TooLarge(string what = Itself, int most = RigFileReader.MostBytes) =>
        $"the file is over {most / (1024 * 1024)} MiB; a {what} is never that large";

    /// <summary>The text of a file; null, with an error, when it cannot be read.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="errors">Where faults go.</param>
    /// <param name="what">What it should be: "rig file".</param>
    /// <param name="most">The most bytes it may have.</param>
    /// <param name="patience">How long to wait for somebody to write to it, where it is a pipe; null for the common time.</param>
    internal static string? LoadText(
        string path, ErrorList errors, string what = Itself, int most = RigFileReader.MostBytes, TimeSpan? patience = null) =>
        Load(path, errors, stream => LoadText(stream, errors, what, most), what, patience);

    /// <summary>The bytes of a file that is no rig file, such as a picture.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="what">What it should be: "picture".</param>
    /// <param name="most">The most bytes it may have.</param>
    /// <param name="patience">How long to wait for somebody to write to it, where it is a pipe; null for the common time.</param>
    /// <param name="errors">What keeps it from being read; empty where nothing does.</param>
    /// <returns>The bytes; null when it cannot be read.</returns>
    public static byte[]? LoadBytes(string path, string what, int most, TimeSpan? patience, out ImmutableArray<FileError> errors)
    {
        ArgumentNullException.ThrowIfNull(path);
        var found = new ErrorList(path);
        var bytes = Load(path, found, stream => ReadAll(stream, most)?.ToArray(), what, patience);
        if (bytes is null && !found.Any)
            found.Add(null, TooLarge(what, most));
        errors = found.ToArray();
        return bytes;
    }

    /// <summary>Opens a file and has it read; null, with an error, where it cannot be opened.</summary>
    private static T? Load<T>(string path, ErrorList errors, Func<FileStream, T?> read, string what, TimeSpan? patience)
        where T : class
    {
        if (path.Length == 0)
        {
            errors.Add(null, "no file is named", "an empty name", $"the name of a {what}");
            return null;
        }

        try
        {
            if (Directory.Exists(path))
            {
                errors.Add(null, "this is a folder, not a file", "a folder", $"a {what}");
                return null;
            }

            using var stream = OrdinaryFile.OpenToRead(path, patience ?? CommonPatience);
            return read(stream);
        }
        catch (TimeoutException)
        {
            errors.Add(
                null,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"nobody wrote to this pipe within {(patience ?? CommonPatience).TotalSeconds:0} s; begin with what writes to it"));
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            errors.Add(null, "there is no such file", null, $"a {what}");
        }
        catch (Exception fault) when (fault is UnauthorizedAccessException or SecurityException)
        {
            errors.Add(null, "the file may not be read: permission is denied");
        }
        catch (Exception fault) when (fault is IOException or ArgumentException or NotSupportedException)
        {
            errors.Add(null, $"the file cannot be read: {ErrorList.Quote(fault.Message)}");
        }

        return null;
    }

    /// <summary>The text of a stream; null, with an error, when it cannot be read. No more of it is read than it may have.</summary>
    /// <param name="stream">The stream.</param>
    /// <param name="errors">Where faults go.</param>
    /// <param name="what">What it should be: "rig file".</param>
    /// <param name="most">The most bytes it may have.</param>
    internal static string? LoadText(Stream stream, ErrorList errors, string what = Itself, int most = RigFileReader.MostBytes)
    {
        try
        {
            if (ReadAll(stream, most) is { } bytes)
                return RigBytes.Decode(bytes.Span, errors);
            errors.Add(null, TooLarge(what, most));
        }
        catch (IOException fault)
        {
            errors.Add(null, $"it cannot be read: {ErrorList.Quote(fault.Message)}");
        }

        return null;
    }

    /// <summary>All bytes; null when there are too many, without having read more than one too many.</summary>
    private static ReadOnlyMemory<byte>? ReadAll(Stream stream, int most)
    {
        // The length of what is not a plain file, such as a pipe, is not known beforehand.
        var known = stream.CanSeek ? stream.Length : 0;
        if (known > most)
            return null;
        var bytes = new byte[known > 0 ? (int)known + 1 : Math.Min(most + 1, FirstRead)];
        var count = 0;
        while (true)
        {
            var read = stream.Read(bytes, count, bytes.Length - count);
            if (read == 0)
                return bytes.AsMemory(0, count);
            count += read;
            if (count > most)
                return null;
            if (count == bytes.Length)
                Array.Resize(ref bytes, Math.Min(bytes.Length * 2, most + 1));
        }
    }

    private static string WriteBeside(string target, byte[] bytes)
    {
        var folder = Path.GetDirectoryName(target) ?? throw new IOException($"'{target}' is not a file in a folder.");
        for (var attempt = 0; ; attempt++)
        {
            // Not of the file's own name, to which there may be nothing to add: a name has an end, of 255 bytes nearly everywhere.
            var temporary = Path.Combine(folder, $".loadmark-{Environment.ProcessId}-{attempt}.tmp");
            FileStream stream;
            try
            {
                stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None);
            }
            catch (IOException) when (attempt < MostAttempts && File.Exists(temporary))
            {
                // Left by a process that was killed, or another save of this one; the next name will do.
                continue;
            }

            try
            {
                using (stream)
                {
                    stream.Write(bytes);
                    stream.Flush(flushToDisk: true);
                }

                return temporary;
            }
            catch
            {
                File.Delete(temporary);
                throw;
            }
        }
    }
}
