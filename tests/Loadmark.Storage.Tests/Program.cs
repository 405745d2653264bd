using Loadmark.Storage.Tests;
using Loadmark.Storage.Tests.Children;
using Xunit.MicrosoftTestingPlatform;

return args is ["child", .. var rest]
    ? await Child.RunAsync(rest)
    : await TestPlatformTestFramework.RunAsync(args, SelfRegisteredExtensions.AddSelfRegisteredExtensions);
