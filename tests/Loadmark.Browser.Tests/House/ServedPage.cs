namespace Loadmark.Browser.Tests.House;

/// <summary>One program for the tests of a class, with the demo rigs that a new folder begins with.</summary>
public sealed class ServedPage : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-browser-").FullName;
    private RunningProgram? _program;

    /// <summary>Where the page is.</summary>
    public Uri Address => Program.Address;

    /// <summary>Where it keeps its rigs.</summary>
    public string Folder => _folder;

    /// <summary>The process.</summary>
    internal RunningProgram Program => _program ?? throw new InvalidOperationException("The program has not been started.");

    /// <inheritdoc/>
    public async ValueTask InitializeAsync() => _program = await RunningProgram.StartAsync(_folder);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_program is not null)
            await _program.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }
}
