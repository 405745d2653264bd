using System.Text;
using Loadmark.Files;
using Loadmark.Processes;
using Loadmark.Sources;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Workshop.DataFolders;

namespace Loadmark.Outputs;

/// <summary>
/// The files that commands are asked to write. What may not be written over is told before a command does its work: what it reads, what
/// belongs to the store, what is no ordinary file; and any other file unless that is asked for.
/// </summary>
/// <param name="process">Where complaints go, and the environment, which may tell where the store is.</param>
/// <param name="data">The folder of the store as typed; null where none was.</param>
internal sealed class OutputFiles(ProcessContext process, string? data)
{
    private static readonly StringComparison PathsAre = OperatingSystem.IsLinux()
        ? StringComparison.Ordinal
        : StringComparison.OrdinalIgnoreCase;

    /// <summary>Why a file cannot be written.</summary>
    /// <param name="path">Its path as typed.</param>
    /// <param name="after">What it was typed after, such as <c>--csv</c> or <c>gear export</c>.</param>
    /// <param name="force">Whether a file that is there may be replaced.</param>
    /// <param name="inputs">The paths of what the command reads.</param>
    /// <returns>A sentence or two; null where nothing stands in the way.</returns>
    public string? Complaint(string path, string after, bool force, params ReadOnlySpan<string> inputs)
    {
        if (path.Length == 0)
            return $"{after} needs the name of a file.";
        if (path == StandardInput.Mark)
            return $"{after}: - is no file, and the answer goes to standard output already. Name a file.";
        try
        {
            if (Directory.Exists(path))
                return $"{path} is a folder. Name a file in it.";
            var real = RealPath.Of(path);
            foreach (var input in inputs)
            {
                if (input != StandardInput.Mark && input.Length > 0 && RealPath.Of(input).Equals(real, PathsAre))
                    return $"{path} is what is read, and is not written over. Name another file.";
            }

            if (IsOfStore(real))
                return $"{path} belongs to the store that rigs and gear are kept in, and is not written over. Name another file.";
            if (Path.GetDirectoryName(real) is { } folder && !Directory.Exists(folder))
                return $"{path} cannot be written: there is no folder {folder}.";
            if (!File.Exists(path))
                return null;
            if (force ? IsOtherThanFile(path) : IsOfSystem(path))
                return NoOrdinaryFile(path);
            return force ? null : $"{path} is there already. With --force it is replaced.";
        }
        catch (FileNotFoundException)
        {
            return $"{path} cannot be written: the folder that the program was started in is gone. Name the file by its full path.";
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return $"{path} cannot be written: {fault.Message}";
        }
    }

    /// <summary>Why a file that is there cannot be replaced: it is no ordinary file, such as a device, which would be gone then.</summary>
    /// <param name="path">Its path as typed; not empty.</param>
    /// <param name="after">What it was typed after.</param>
    /// <returns>A sentence or two; null where nothing stands in the way.</returns>
    public static string? ComplaintOfKind(string path, string after)
    {
        if (path == StandardInput.Mark)
            return $"{after}: - is no file, and the answer goes to standard output already. Name a file.";
        return File.Exists(path) && IsOtherThanFile(path) ? NoOrdinaryFile(path) : null;
    }

    /// <summary>Saves a text, whole or not at all. False where it could not be written; that has been said then.</summary>
    /// <param name="path">Its path as typed, of which nothing was complained.</param>
    /// <param name="text">The text.</param>
    /// <param name="force">Whether a file that is there is replaced.</param>
    public bool TrySave(string path, string text, bool force) => TrySave(path, Encoding.UTF8.GetBytes(text), force);

    /// <summary>Saves bytes, whole or not at all. False where they could not be written; that has been said then.</summary>
    /// <param name="path">Its path as typed, of which nothing was complained.</param>
    /// <param name="bytes">The bytes.</param>
    /// <param name="force">Whether a file that is there is replaced.</param>
    public bool TrySave(string path, byte[] bytes, bool force)
    {
        try
        {
            RigFile.Save(path, bytes, force);
            return true;
        }
        catch (UnauthorizedAccessException)
        {
            process.Error.WriteLine(
                $"loadmark: {TerminalText.Neutral(path)} could not be written: permission is denied. Check the rights of "
                + $"{(File.Exists(path) ? "the file" : "the folder")}, or name another.");
            return false;
        }
        catch (IOException fault)
        {
            process.Error.WriteLine($"loadmark: {TerminalText.Neutral(path)} could not be written: {TerminalText.Neutral(fault.Message)}");
            return false;
        }
    }

    private static string NoOrdinaryFile(string path) =>
        $"{path} is no ordinary file, but a pipe, a device or the like. Name another file.";

    /// <summary>Whether what is there is no ordinary file; one that is write-protected is told of when it is written.</summary>
    private static bool IsOtherThanFile(string path) =>
        IsOfSystem(path) || (!OrdinaryFile.Is(path) && !File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly));

    /// <summary>
    /// Whether a path is one by which the system names devices and open files, such as <c>/dev/stdout</c>: that may lead to an ordinary
    /// file too, which somebody is writing to.
    /// </summary>
    private static bool IsOfSystem(string path) =>
        !OperatingSystem.IsWindows() && Path.GetFullPath(path) is var full
            && (Path.GetDirectoryName(full) is "/dev" or "/dev/fd" || full.StartsWith("/proc/", StringComparison.Ordinal));

    /// <summary>The database has files beside it that begin with its name.</summary>
    private bool IsOfStore(string real)
    {
        string folder;
        try
        {
            folder = DataFolder.From(data, process.Environment);
        }
        catch (StorageException)
        {
            // Nobody knows where the store is, so that nothing can be kept there.
            return false;
        }

        var store = RealPath.Of(Path.Combine(folder, Store.FileName));
        return Path.GetFileName(real).StartsWith(Path.GetFileName(store), StringComparison.OrdinalIgnoreCase)
            && string.Equals(Path.GetDirectoryName(real), Path.GetDirectoryName(store), PathsAre);
    }
}
