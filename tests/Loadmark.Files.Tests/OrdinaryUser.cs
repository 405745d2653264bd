using System.Runtime.InteropServices;

namespace Loadmark.Files.Tests;

/// <summary>
/// Lets permissions bind the current thread even where the tests run as root, as they do in many build machines: Linux
/// checks files against the thread's file-system user (setfsuid), which may be anyone for a while.
/// </summary>
internal sealed partial class OrdinaryUser : IDisposable
{
    private const uint Nobody = 65534;

    private readonly uint? _before;

    private OrdinaryUser(uint? before) => _before = before;

    /// <summary>Becomes an ordinary user until disposed; all file work must stay on this thread.</summary>
    public static OrdinaryUser Become()
    {
        if (!OperatingSystem.IsLinux() || !Environment.IsPrivilegedProcess)
            return new OrdinaryUser(null);

        var before = (uint)SetFileSystemUser(Nobody);
        Assert.Equal(Nobody, (uint)SetFileSystemUser(Nobody));
        return new OrdinaryUser(before);
    }

    public void Dispose()
    {
        if (_before is { } before)
            _ = SetFileSystemUser(before);
    }

    [LibraryImport("libc", EntryPoint = "setfsuid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int SetFileSystemUser(uint user);
}
