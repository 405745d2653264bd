namespace Loadmark.Browser.Tests.House;

/// <summary>One program for the tests of a class, or of all classes, with the demo rigs that a new folder begins with.</summary>
public sealed class ServedPage : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-browser-").FullName;
    private RunningProgram? _program;
    private IReadOnlyDictionary<string, string> _demo = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Where the page is.</summary>
    public Uri Address => Program.Address;

    /// <summary>Where it keeps its rigs.</summary>
    public string Folder => _folder;

    /// <summary>The process.</summary>
    internal RunningProgram Program => _program ?? throw new InvalidOperationException("The program has not been started.");

    /// <summary>The address of a demo rig's page, which tests that import a rig of the same name do not change.</summary>
    /// <param name="rig">The rig's name.</param>
    public string AddressOf(string rig) => _demo[rig];

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        _program = await RunningProgram.StartAsync(_folder);
        using var kept = new StoredContent(_program);
        _demo = await kept.AddressesAsync();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_program is not null)
            await _program.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }
}
