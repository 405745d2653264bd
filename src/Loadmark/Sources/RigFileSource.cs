using Loadmark.Files;
using Loadmark.Files.Errors;
using Loadmark.Files.Parsing;
using Loadmark.Processes;
using Loadmark.Storage.Faults;
using Loadmark.Workshop.DataFolders;

namespace Loadmark.Sources;

/// <summary>Rigs from files on disk, or from standard input.</summary>
/// <param name="process">Standard input, and the environment, which may tell where the gear library is.</param>
/// <param name="data">The folder of the gear library as typed; null where none was.</param>
internal sealed class RigFileSource(ProcessContext process, string? data) : IRigSource
{
    private readonly Lazy<LazyLibrary> _gear = new(() => new LazyLibrary(() => DataFolder.From(data, process.Environment)));

    /// <inheritdoc/>
    public IGearLookup? Library => _gear.Value.IsThere ? _gear.Value : null;

    /// <inheritdoc/>
    public (RigFileResult Reading, string? Text) ReadWithText(string path, IGearLookup? library)
    {
        try
        {
            // Who types the rig, or forgot the pipe, is told what the program waits for.
            if (path == StandardInput.Mark)
            {
                using var typing = InputWait.ForStandardInput(process, "the end of the rig");
                return RigFileReader.ReadWithText(process.Input(), FileError.StandardInput, library);
            }

            using var wait = InputWait.ForFile(process, path);
            return RigFileReader.ReadFileWithText(path, library, process.Patience);
        }
        catch (StorageException fault)
        {
            return (new RigFileResult(null, [new FileError(
                StandardInput.NameOf(path),
                1,
                1,
                $"it takes gear from the library, which cannot be read. {fault.Message}") { IsOfWhole = true }]), null);
        }
    }

    /// <inheritdoc/>
    public IRigSource KeptIn(string? folder) => folder is null ? this : new RigFileSource(process, folder);
}
